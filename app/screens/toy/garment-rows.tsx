import { GarmentPicture, Icon, useWords } from '../../parts';
import { removeGarment } from '../../storage';
import { placeAddress } from '../shared/places';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import type { Known } from '../shared/with-toy';

/** What is being made, or was made, for a toy. */
export function GarmentRows({ known: { toy, garments, place } }: { readonly known: Known }) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const day = new Intl.DateTimeFormat(hand.locale, { dateStyle: 'medium' });
  const remove = (id: string, name: string) =>
    attempt(async () => {
      const undo = await removeGarment(id);
      notice({
        words: say('screen.toy.garment-removed', { name }),
        act: { words: say('screen.undo'), run: () => void attempt(undo) },
      });
    });
  return (
    <section>
      <h2>{say('screen.toy.garments')}</h2>
      <ul class="garment-rows">
        {garments.map(({ id, order, createdAt }) => {
          const name = say(`garment.${order.garment}.name`);
          const step = place?.garmentId === id ? place.step : 'review';
          return (
            <li key={id} class="garment-row">
              <a href={place?.garmentId === id ? placeAddress(place) : to('toy', toy.id, id, step)}>
                <GarmentPicture id={order.garment} />
                <span>
                  <b>{name}</b>
                  <span class="soft small">{day.format(createdAt)}</span>
                </span>
              </a>
              <button
                type="button"
                class="quiet round"
                aria-label={say('screen.toy.remove-garment', { name })}
                onClick={() => remove(id, name)}
              >
                <Icon name="bin" />
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
