import { useEffect, useId, useRef } from 'preact/hooks';
import { unitFace } from '../../body';
import type { Step } from '../../measuring';
import { fieldText, Icon, useWords } from '../../parts';
import { useEntry } from '../shared/entry/entry';
import { useLost } from '../shared/entry/lost';
import type { Making } from '../shared/making/making';
import { troubleWords } from '../shared/trouble/attempt';

type NumberRowProps = { readonly making: Making; readonly step: Step; readonly at: number };

/** One number of many: kept at the next pause, on the way to the next, or when the page is left, as in a step of its own. */
export function NumberRow({ making, step: { measure, suggested }, at }: NumberRowProps) {
  const { say, hand } = useWords();
  const { toy, garment, readings, flags } = making;
  const id = useId();
  const entry = useEntry({
    toyId: toy.id,
    garmentId: garment.id,
    measureId: measure,
    readings: readings[measure] ?? [],
    hand,
    onLost: useLost(making, measure),
  });
  const unit = useRef(hand.unit);
  useEffect(() => {
    if (unit.current !== hand.unit) entry.rewrite(hand);
    unit.current = hand.unit;
  }, [hand.unit]);
  const { state } = entry;
  const doubt = flags.find(({ severity, measures }) => severity !== 'note' && measures[0] === measure);
  const wrong =
    state.is === 'wrong' ? say(state.code) : state.is === 'failed' ? troubleWords(say, state.error.code) : '';
  return (
    <li class="typed-row">
      <label for={id}>
        <span class="typed-at">{at}</span> {say(`measure.${measure}.name`)}
        {doubt && (
          <span class="typed-doubt small">
            <Icon name="warn" />
            {say(`screen.doubt.${doubt.severity}`)}
          </span>
        )}
      </label>
      <span class="amount-field typed-field">
        <input
          id={id}
          type="text"
          inputMode={hand.unit === 'in' ? 'text' : 'decimal'}
          enterKeyHint="next"
          autoComplete="off"
          spellcheck={false}
          dir="ltr"
          value={entry.text}
          placeholder={suggested ? fieldText(suggested.value, hand) : ''}
          aria-invalid={wrong !== ''}
          aria-describedby={`${id}-wrong`}
          onFocus={(event) => entry.kept && event.currentTarget.select()}
          onInput={(event) => entry.type(event.currentTarget.value)}
          onBlur={() => void entry.keep()}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            nextField(event.currentTarget)?.focus();
          }}
        />
        <span class="soft">{unitFace(hand)}</span>
      </span>
      <p id={`${id}-wrong`} class="wrong-words small" role="alert">
        {wrong}
      </p>
    </li>
  );
}

/** The field of the next row; none after the last. */
const nextField = (field: HTMLInputElement) => field.closest('li')?.nextElementSibling?.querySelector('input');
