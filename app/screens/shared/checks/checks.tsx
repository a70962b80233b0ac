import './checks.css';

type ChecksProps<V> = {
  readonly legend: string;
  readonly rows: readonly { readonly value: V; readonly words: string; readonly on: boolean }[];
  readonly onToggle: (value: V) => void;
};

/** Any of several, each ticked or not. */
export function Checks<V>({ legend, rows, onToggle }: ChecksProps<V>) {
  return (
    <fieldset class="checks">
      <legend>{legend}</legend>
      {rows.map(({ value, words, on }, index) => (
        <label key={index}>
          <input type="checkbox" checked={on} onChange={() => onToggle(value)} />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
