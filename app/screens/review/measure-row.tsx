import type { MeasureId } from '../../body';
import { isWish } from '../../measuring';
import { Icon, shownLength, useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { to } from '../shared/route';
import '../shared/measure-from.css';

type MeasureRowProps = { readonly making: Making; readonly measure: MeasureId; readonly doubted: boolean };

/** One number: what it is, what it measures, and where it comes from when not from the tape. */
export function MeasureRow({ making, measure, doubted }: MeasureRowProps) {
  const { say, hand } = useWords();
  const { toy, garment, body, readings } = making;
  const known = body.sizes[measure];
  const count = readings[measure]?.length ?? 0;
  return (
    <a
      class={count > 0 ? 'measure-row' : 'measure-row guessed'}
      href={`${to('toy', toy.id, garment.id, 'measure', measure)}?then=review`}
    >
      <span>
        {say(`measure.${measure}.name`)}
        {doubted && <Icon name="warn" />}
        {count > 1 && <span class="soft small"> {say('screen.review.readings', { count })}</span>}
      </span>
      <span class="measure-value">
        {known ? shownLength(known.value, hand) : '–'}
        {known && known.from !== 'tape' && (
          <span class="measure-from">
            {isWish(measure) && known.from === 'estimate'
              ? say('screen.wishes.suggested')
              : say(`screen.from.${known.from}`, { give: known.give })}
          </span>
        )}
      </span>
    </a>
  );
}
