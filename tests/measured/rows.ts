/** What a measured case prints for one toy: a line each, mm unless it says otherwise; null where there is nothing. */
export type Rows = readonly (readonly [name: string, value: number | string | null | undefined])[];

/** Prints cases as tables, a column a toy. */
export function table(title: string, columns: readonly (readonly [string, Rows])[]): string {
  const names = [...new Set(columns.flatMap(([, rows]) => rows.map(([name]) => name)))];
  const lines = names.map((name) => [
    name,
    ...columns.map(([, rows]) => shown(rows.find(([each]) => each === name)?.[1])),
  ]);
  const alike = lines.every(([, ...cells]) => cells.every((cell) => cell === cells[0]));
  const whole = [[title, ...columns.map(([toy]) => toy)], ...lines];
  const all = alike && columns.length > 1 ? [[title, 'every toy'], ...lines.map((line) => line.slice(0, 2))] : whole;
  const widths = (all[0] ?? []).map((_, at) => Math.max(...all.map((line) => (line[at] ?? '').length)));
  const padded = all.map((line) =>
    line
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
  return [padded[0], '-'.repeat(padded[0]?.length ?? 0), ...padded.slice(1)].join('\n');
}

function shown(value: number | string | null | undefined): string {
  if (value === null || value === undefined) return '–';
  if (typeof value === 'string') return value;
  return Number.isFinite(value) ? String(Number(value.toFixed(Math.abs(value) < 3 ? 3 : 1))) : '–';
}
