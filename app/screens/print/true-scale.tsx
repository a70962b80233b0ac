import { useId, useState } from 'preact/hooks';
import { formatLength, type Mm, millimetreFace, parseLength } from '../../body';
import { CHECK_MM, LARGEST_CORRECTION, LONG_MM } from '../../drafting/sheets';
import { useWords } from '../../parts';
import '../shared/making/amount-field.css';

type TrueScaleProps = { readonly correction: number; readonly onCorrection: (correction: number) => void };

/** Letter shrunk onto A4, and A4 onto Letter: what the check line then measures, as a share (widths and heights of both). */
const CAUSES = [
  { code: 'letter-on-a4', share: 210 / 215.9 },
  { code: 'a4-on-letter', share: 279.4 / 297 },
] as const;
const NEAR = 0.006;

/** Between what the short line may measure and what the long one may. */
const BETWEEN_MM = 100;

/** Either line may be told of: none measures so wrong that it could be the other. */
const shareOf = (measured: Mm): number => measured / (measured < BETWEEN_MM ? CHECK_MM : LONG_MM);

/** What to do when the printed line measures wrong: say what it measures, and the next print is put right. */
export function TrueScale({ correction, onCorrection }: TrueScaleProps) {
  const { say, hand } = useWords();
  const id = useId();
  const [text, setText] = useState('');
  const parsed = parseLength(/[a-z"”]/i.test(text) ? text : `${text} mm`, hand);
  const share = parsed.ok ? shareOf(parsed.mm) : null;
  const fits = share !== null && Math.abs(1 / share - 1) <= LARGEST_CORRECTION;
  const cause = CAUSES.find((each) => share !== null && Math.abs(each.share - share) < NEAR);
  return (
    <details class="true-scale">
      <summary>{say('screen.scale.name')}</summary>
      <p id={`${id}-how`}>
        {say('screen.scale.how', {
          long: formatLength(LONG_MM, { ...hand, unit: 'cm' }),
          short: formatLength(CHECK_MM, { ...hand, unit: 'cm' }),
        })}
      </p>
      <div class="amount">
        <label for={id}>{say('screen.scale.measured')}</label>
        <span class="amount-field">
          <input
            id={id}
            value={text}
            inputMode="decimal"
            autoComplete="off"
            aria-invalid={text !== '' && !fits}
            aria-describedby={`${id}-how ${id}-said`}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <span class="soft">{millimetreFace(hand.locale)}</span>
        </span>
      </div>
      <p id={`${id}-said`} role="status">
        {text !== '' && !fits && say('screen.scale.too-far')}
        {fits && cause && say(`screen.scale.${cause.code}`)}
      </p>
      <div class="slip-acts">
        <button type="button" class="plain" disabled={!fits} onClick={() => share && onCorrection(1 / share)}>
          {say('screen.scale.correct')}
        </button>
        {correction !== 1 && (
          <button type="button" class="quiet" onClick={() => onCorrection(1)}>
            {say('screen.scale.reset')}
          </button>
        )}
      </div>
      {correction !== 1 && <p class="soft small">{say('screen.scale.corrected', { share: correction })}</p>}
    </details>
  );
}
