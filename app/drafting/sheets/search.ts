import { chance } from '../packing';
import { bottomOf, type Fresh, fill, type Item, type Sheet } from './fill';

/** Of so few items there are no more orders. */
const ORDERS = [1, 1, 2, 6];

/** An item in all its turns. */
export type Turns = readonly Item[];

export type Effort = { readonly effort: number; readonly seed: number };

/**
 * The fewest sheets found in `effort` fillings: largest first, longest first, then two items changing places at a
 * time, kept where no worse; ends where there are as few as `enough`. The same seed gives the same sheets.
 */
export function fewestSheets(
  items: readonly Turns[],
  started: readonly Sheet[],
  fresh: Fresh,
  { effort, seed, enough }: Effort & { readonly enough: number },
): readonly Sheet[] {
  const next = chance(seed);
  const starts = [byMost(items, area), byMost(items, longestSide)];
  let best: { readonly order: readonly Turns[]; readonly sheets: readonly Sheet[]; readonly cost: Cost } | undefined;
  const most = Math.min(Math.max(1, effort), ORDERS[items.length] ?? Infinity);
  for (let tried = 0; tried < most; tried += 1) {
    const order: readonly Turns[] = starts[tried] ?? swapped(best?.order ?? items, next);
    const sheets = fill(order, started, fresh);
    const cost = costOf(sheets);
    if (!best || !dearer(cost, best.cost)) best = { order, sheets, cost };
    if (best.sheets.length <= enough) break;
  }
  return best?.sheets ?? started;
}

/** How many sheets, how much lies on the last one, and how far down all are used: less of each is nearer to a sheet less. */
type Cost = readonly [sheets: number, last: number, used: number];

function costOf(sheets: readonly Sheet[]): Cost {
  const last = sheets.length > 1 ? (sheets.at(-1)?.laid ?? []).reduce((sum, { turned }) => sum + area(turned), 0) : 0;
  return [sheets.length, last, sheets.reduce((sum, sheet) => sum + bottomOf(sheet), 0)];
}

function dearer(a: Cost, b: Cost): boolean {
  const at = a.findIndex((each, i) => each !== b[i]);
  return (a[at] ?? 0) > (b[at] ?? 0);
}

function byMost(items: readonly Turns[], size: (turned: Item) => number): readonly Turns[] {
  const most = (turns: Turns): number => Math.max(...turns.map(size));
  return [...items].sort((a, b) => most(b) - most(a));
}

function area({ rows }: Item): number {
  return rows.rows.flat().reduce((sum, [from, to]) => sum + to - from, 0);
}

function longestSide({ rows }: Item): number {
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
