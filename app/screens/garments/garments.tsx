import type { Head } from '../../drafting/catalogue';
import { asking } from '../../measuring';
import { GarmentPicture, Page, useWords } from '../../parts';
import { saveGarment, type Toy } from '../../storage';
import { useGarments } from '../shared/making/garments-known';
import { needsOf } from '../shared/making/making';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { WithToy } from '../shared/with-toy';
import './garments.css';

/** How many numbers are asked for, as it comes. */
const numbersFor = (row: Head, toy: Toy): number => asking(toy, needsOf(row, toy, { garment: row.id })).asked.length;

/** What to make, by picture: whatever suits this kind of body. */
export function GarmentsScreen({ params }: ScreenProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const garments = useGarments();
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy }) => {
        const suited = garments?.filter((garment) => garment.bodies.includes(toy.kind));
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
                    <GarmentPicture id={row.id} />
                    <b>{say(`garment.${row.id}.name`)}</b>
                    <span class="soft small">{say(`garment.${row.id}.note`)}</span>
                    <span class="small">
                      {say('screen.garments.asks', { level: say(`level.${row.level}`), count: numbersFor(row, toy) })}
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
