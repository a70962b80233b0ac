import { useId } from 'preact/hooks';
import type { Pick } from './picks';
import './segments.css';

type SegmentsProps<V extends string> = {
  readonly legend: string;
  readonly note?: string;
  readonly picks: readonly Pick<V>[];
  readonly chosen: V;
  readonly onPick: (value: V) => void;
};

/** A setting: what it is about, and its few values side by side in one strip. */
export function Segments<V extends string>({ legend, note, picks, chosen, onPick }: SegmentsProps<V>) {
  const name = useId();
  return (
    <fieldset class="segments">
      <legend>{legend}</legend>
      {note && <p class="soft small">{note}</p>}
      <div class="segments-strip">
        {picks.map(({ value, words }) => (
          <label key={value}>
            <input type="radio" name={name} checked={value === chosen} onChange={() => onPick(value)} />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
