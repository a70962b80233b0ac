import { chance } from '../packing';
import type { Fitting } from './figure';
import { bottomOf, type Fresh, fill, type Sheet } from './fill';

/** A figure in all its turns. */
export type Turns = readonly Fitting[];

/**
 * The fewest sheets found in `effort` fillings: largest first, longest first, then two figures changing places at a
 * time, kept where no worse. The same seed gives the same sheets.
 */
export function fewestSheets(
  figures: readonly Turns[],
  started: readonly Sheet[],
  fresh: Fresh,
  { effort, seed }: { readonly effort: number; readonly seed: number },
): readonly Sheet[] {
  const next = chance(seed);
  const starts = [byMost(figures, area), byMost(figures, longestSide)];
  let best: { readonly order: readonly Turns[]; readonly sheets: readonly Sheet[]; readonly cost: Cost } | undefined;
  for (let tried = 0; tried < Math.max(1, effort); tried += 1) {
    const order: readonly Turns[] = starts[tried] ?? swapped(best?.order ?? figures, next);
    const sheets = fill(order, started, fresh);
    const cost = costOf(sheets);
    if (!best || !dearer(cost, best.cost)) best = { order, sheets, cost };
    if (figures.length < 2) break;
  }
  return best?.sheets ?? started;
}

type Cost = { readonly sheets: number; readonly used: number };

function costOf(sheets: readonly Sheet[]): Cost {
  return { sheets: sheets.length, used: sheets.reduce((sum, sheet) => sum + bottomOf(sheet), 0) };
}

function dearer(a: Cost, b: Cost): boolean {
  return a.sheets > b.sheets || (a.sheets === b.sheets && a.used > b.used);
}

function byMost(figures: readonly Turns[], size: (turned: Fitting) => number): readonly Turns[] {
  const most = (turns: Turns): number => Math.max(...turns.map(size));
  return [...figures].sort((a, b) => most(b) - most(a));
}

function area({ rows }: Fitting): number {
  return rows.rows.flat().reduce((sum, [from, to]) => sum + to - from, 0);
}

function longestSide({ rows }: Fitting): number {
  return Math.max(rows.width, rows.height);
}

function swapped(order: readonly Turns[], next: () => number): readonly Turns[] {
  const out = [...order];
  const a = Math.floor(next() * out.length);
  const b = Math.floor(next() * out.length);
  const [first, second] = [out[a], out[b]];
  if (first && second) {
    out[a] = second;
    out[b] = first;
  }
  return out;
}
