import type { Head } from '../../drafting/catalogue';
import { Page, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import { Worn } from '../shared/dressed/worn';
import { bodyOf, bodyShown } from '../shared/making/body-of';
import { useGarments } from '../shared/making/garments-known';
import { numbersLeft } from '../shared/making/numbers-left';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { WithToy } from '../shared/with-toy';
import './garments.css';

/** What to make, by picture: whatever suits this kind of body. */
export function GarmentsScreen({ params }: ScreenProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const garments = useGarments();
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy, readings }) => {
        const suited = garments?.filter((garment) => garment.bodies.includes(toy.kind));
        const known = bodyOf({ toy, readings });
        const body = bodyShown(known);
        const left = (row: Head) => {
          const { count, minutes } = numbersLeft(row, toy, known);
          return count === 0 ? say('screen.garments.no-more') : say('screen.garments.left', { count, minutes });
        };
        const begin = (garment: string) =>
          attempt(async () => {
            const { id } = await saveGarment(toy.id, { garment });
            go(to('toy', toy.id, id, 'choices'));
          });
        return (
          <Page title={say('screen.garments.title', { name: toy.name })} back={to('toy', toy.id)} whose={toy.name} wide>
            <ul class="garments">
              {suited?.map((row) => (
                <li key={row.id}>
                  <button type="button" class="garment" onClick={() => begin(row.id)}>
                    <Worn body={body} order={{ garment: row.id }} />
                    <b>{say(`garment.${row.id}.name`)}</b>
                    <span class="soft small">{say(`garment.${row.id}.note`)}</span>
                    <span class="garment-left small">
                      {say('screen.garments.asks', { level: say(`level.${row.level}`), left: left(row) })}
                    </span>
                  </button>
                </li>
              ))}
            </ul>
            {suited?.length === 0 && <p>{say('screen.garments.none')}</p>}
          </Page>
        );
      }}
    </WithToy>
  );
}
