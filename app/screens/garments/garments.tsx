import { GarmentPicture, Page, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import { useGarments } from '../shared/making/garments-known';
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
              {suited?.map(({ id }) => (
                <li key={id}>
                  <button type="button" class="garment" onClick={() => begin(id)}>
                    <GarmentPicture id={id} />
                    <b>{say(`garment.${id}.name`)}</b>
                    <span class="soft small">{say(`garment.${id}.note`)}</span>
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
