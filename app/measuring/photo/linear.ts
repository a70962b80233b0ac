/**
 * Solves a square system by elimination with pivoting. Rows of `matrix`, one value each on the right; null where it has
 * no single answer.
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (let column = 0; column < rows.length; column++) {
    const pivot = pivotIn(rows, column);
    const lead = rows[pivot];
    if (!lead || Math.abs(lead[column] ?? 0) < SINGULAR) return null;
    rows[pivot] = rows[column] ?? lead;
    rows[column] = lead;
    for (const [i, row] of rows.entries()) {
      if (i === column) continue;
      const factor = (row[column] ?? 0) / (lead[column] ?? 1);
      for (let j = column; j <= rows.length; j++) row[j] = (row[j] ?? 0) - factor * (lead[j] ?? 0);
    }
  }
  return rows.map((row, i) => (row[rows.length] ?? 0) / (row[i] ?? 1));
}

/** Systems here are scaled to about 1: a pivot this small means that points coincide or lie on a line. */
const SINGULAR = 1e-12;

function pivotIn(rows: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let i = column + 1; i < rows.length; i++)
    if (Math.abs(rows[i]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = i;
  return best;
}
