import { useRef } from 'preact/hooks';
import { LONGEST_MM, type MeasureId, type Mm } from '../../../body';
import { useWords } from '../../../parts';
import { saveReading } from '../../../storage';
import { useAttempt } from '../trouble/attempt';
import { AmountField } from './amount-field';
import { type Making, wishesOf } from './making';

/** No wish is shorter than this, mm: there would be nothing to sew. */
const SHORTEST_WISH_MM = 5;

type WishInputsProps = { readonly making: Making; readonly onLook?: (measure: MeasureId) => void };

/** The lengths a maker chooses, each with what is suggested in it; `onLook` hears which one she is at. */
export function WishInputs({ making, onLook }: WishInputsProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const own = useRef<{ [M in MeasureId]?: string }>({});
  const { body, readings, steps } = making;
  const wish = (measure: MeasureId, mm: Mm) =>
    attempt(async () => {
      const instead = own.current[measure];
      const how = instead ? { instead } : { anew: true };
      own.current[measure] = (await saveReading(making.toy.id, measure, mm, 'tape', how)).id;
    });
  return (
    <>
      {wishesOf(steps).map(({ measure }) => (
        <div key={measure} onFocusCapture={() => onLook?.(measure)}>
          <AmountField
            legend={say(`measure.${measure}.name`)}
            {...(!readings[measure] && body.sizes[measure] && { note: say('screen.wishes.suggested') })}
            kind={{ kind: 'length', min: SHORTEST_WISH_MM, max: LONGEST_MM, fallback: 0 }}
            value={body.sizes[measure]?.value ?? null}
            onChange={(mm) => wish(measure, mm)}
          />
        </div>
      ))}
    </>
  );
}
