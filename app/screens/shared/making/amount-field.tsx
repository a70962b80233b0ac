import { useId, useState } from 'preact/hooks';
import { type Hand, parseLength, unitFace } from '../../../body';
import type { Choice } from '../../../drafting/catalogue';
import { fieldText, useWords } from '../../../parts';
import { percentSign } from '../../../words';
import './amount-field.css';

type Amount = Extract<Choice, { kind: 'count' | 'share' | 'length' }>;

type AmountFieldProps = {
  readonly legend: string;
  readonly kind: Amount;
  /** Null while nothing is known. */
  readonly value: number | null;
  readonly note?: string;
  readonly onChange: (value: number) => void;
};

/** A number to choose between two limits: how many, how large a share (in percent), or how long. */
export function AmountField({ legend, note, kind, value, onChange }: AmountFieldProps) {
  const { say, hand } = useWords();
  const id = useId();
  const shown = value === null ? '' : shownAs(kind.kind, value, hand);
  const [text, setText] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const read = (typed: string): number => {
    if (kind.kind !== 'length') return Number(typed.replace(',', '.')) / (kind.kind === 'share' ? 100 : 1);
    const parsed = parseLength(typed, hand);
    return parsed.ok ? parsed.mm : Number.NaN;
  };
  const take = (typed: string) => {
    setText(typed);
    const amount = read(typed);
    const fits = amount >= kind.min && amount <= kind.max && (kind.kind !== 'count' || Number.isInteger(amount));
    setWrong(!fits);
    if (fits) onChange(amount);
  };
  const unit = { length: unitFace(hand), share: percentSign(hand.locale), count: '' }[kind.kind];
  return (
    <div class="amount">
      <label for={id}>
        {legend}
        {note && <span class="soft small"> {note}</span>}
      </label>
      <span class="amount-field">
        <input
          id={id}
          value={text ?? shown}
          inputMode={kind.kind === 'length' ? 'text' : 'decimal'}
          autoComplete="off"
          aria-invalid={wrong}
          aria-describedby={`${id}-wrong`}
          onInput={(event) => take(event.currentTarget.value)}
          onBlur={() => !wrong && setText(null)}
        />
        <span class="soft">{unit}</span>
      </span>
      <p id={`${id}-wrong`} class="wrong-words small" role="alert">
        {wrong && say(`screen.choices.between-${kind.kind}`, { min: kind.min, max: kind.max })}
      </p>
    </div>
  );
}

function shownAs(kind: Amount['kind'], value: number, hand: Hand): string {
  if (kind === 'length') return fieldText(value, hand);
  return String(kind === 'share' ? Math.round(value * 100) : value);
}
