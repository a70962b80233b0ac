import { useRef } from 'preact/hooks';
import { findMeasure, LONGEST_MM, type MeasureId, type Mm } from '../../body';
import { useWords } from '../../parts';
import { saveReading } from '../../storage';
import { AmountField } from '../shared/making/amount-field';
import type { Making } from '../shared/making/making';
import { useAttempt } from '../shared/trouble/attempt';

/** No wish is shorter than this, mm: there would be nothing to sew. */
const SHORTEST_WISH_MM = 5;

/** The lengths a maker chooses, to be changed while the pieces are in sight. */
export function WishFields({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const own = useRef<{ [M in MeasureId]?: string }>({});
  const wishes = making.steps.filter(({ measure }) => findMeasure(measure)?.nature === 'wish');
  if (wishes.length === 0) return null;
  const wish = (measure: MeasureId, mm: Mm) =>
    attempt(async () => {
      const instead = own.current[measure];
      const how = instead ? { instead } : { anew: true };
      own.current[measure] = (await saveReading(making.toy.id, measure, mm, 'tape', how)).id;
    });
  return (
    <details class="folded-fields">
      <summary>{say('screen.pattern.wishes')}</summary>
      {wishes.map(({ measure }) => (
        <AmountField
          key={measure}
          legend={say(`measure.${measure}.name`)}
          kind={{ kind: 'length', min: SHORTEST_WISH_MM, max: LONGEST_MM, fallback: 0 }}
          value={making.body.sizes[measure]?.value ?? 0}
          onChange={(mm) => wish(measure, mm)}
        />
      ))}
    </details>
  );
}
