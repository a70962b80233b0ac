import { findMeasure, type MeasureId } from '../../body';
import { isWish } from '../../measuring';
import { Icon, useWords } from '../../parts';
import { type Garment, removeGarment } from '../../storage';
import { Worn } from '../shared/dressed/worn';
import { bodyOf, bodyShown } from '../shared/making/body-of';
import { useGarments } from '../shared/making/garments-known';
import { askedFor } from '../shared/making/making';
import { placeAddress } from '../shared/places';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import type { Known } from '../shared/with-toy';

/** What is being made, or was made, for a toy. */
export function GarmentRows({ known }: { readonly known: Known }) {
  const { garments } = known;
  const whereOf = useWhere(known);
  const body = bodyShown(bodyOf(known));
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
        {garments.map((garment) => {
          const { id, order, createdAt } = garment;
          const name = say(`garment.${order.garment}.name`);
          return (
            <li key={id} class="garment-row">
              <a href={whereOf(garment)}>
                <Worn body={body} order={order} />
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

/** Where a garment opens: finished at its pattern; else where she was, or at its numbers. */
function useWhere({ toy, readings, place }: Known): (garment: Garment) => string {
  const rows = useGarments();
  return (garment) => {
    const row = rows?.find(({ id }) => id === garment.order.garment);
    const here = place?.garmentId === garment.id ? place : null;
    if (here?.step.startsWith('sew')) return placeAddress(here);
    const drawn = here?.step === 'pattern' || here?.step === 'print';
    const whole = row && askedFor({ toy, garment, row, readings }).every((id) => readings[id] || isExtra(id));
    if (drawn || (whole && Object.keys(readings).length > 0)) return to('toy', toy.id, garment.id, 'pattern');
    return here ? placeAddress(here) : to('toy', toy.id, garment.id, 'review');
  };
}

/** Hard to take, or chosen on a page of its own: a garment is finished without it. */
const isExtra = (id: MeasureId) => isWish(id) || findMeasure(id)?.optional === true;
