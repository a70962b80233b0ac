import type { ComponentChildren } from 'preact';
import type { Mm } from '../../body';
import { shownLength, useWords } from '../../parts';
import './length-table.css';

type LengthTableProps = {
  readonly label: string;
  /** What the first column names, and what each of the others is. */
  readonly heads: readonly [string, ...string[]];
  readonly rows: readonly { readonly key: string; readonly name: ComponentChildren; readonly lengths: readonly Mm[] }[];
};

/** Lengths side by side, a row a place, in the reader's unit, which the heads name. */
export function LengthTable({ label, heads: [first, ...columns], rows }: LengthTableProps) {
  const { hand } = useWords();
  return (
    <div class="length-table-place">
      <table class="length-table" aria-label={label}>
        <thead>
          <tr>
            <th scope="col">{first}</th>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, lengths }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              {lengths.map((mm, at) => (
                <td key={columns[at]} data-column={columns[at]}>
                  {shownLength(mm, hand, true)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
