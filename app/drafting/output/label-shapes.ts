// The ways a label may be set, the easiest to read first.

import type { Mm } from '../../body';
import { type Paragraph, type Setting, setIn } from './flow';
import { SMALLEST_PT, sizesOf, smallestOf, type TextWidth } from './ink';

/** A label broken into lines, level or reading upwards. */
export type Shape = { readonly set: Setting; readonly turn: 0 | 'up' };

/** Sizes tried, points. */
const SIZES_PT = [10, 9, 8, SMALLEST_PT];

/** Widths tried at each size, mm; and those for all in one run after the title, where pieces are long and thin. */
const WIDTHS_MM = [90, 62, 48, 38, 30, 24];
const RUN_WIDTHS_MM = [180, 140, 100, 76];

/** What reading is harder by, in points of size: a line broken once more, a label on its side, all in one run. */
const BROKEN = 0.7;
const UP = 1.8;
const RUN = 1.5;

/** Every shape of a label, each once, the easiest to read first; each is set only when none that is easier is left. */
export function* shapesOf(paragraphs: readonly Paragraph[], widthOf: TextWidth): Generator<Shape> {
  const columns = columnsOf(paragraphs, widthOf);
  const ready: Rated[] = [];
  for (;;) {
    const shape = easiest(ready);
    const column = easiest(columns);
    if (column && column.cost <= (shape?.cost ?? Infinity)) {
      const { value } = column.narrower.next();
      if (!value) columns.splice(columns.indexOf(column), 1);
      else {
        column.cost = value.cost;
        ready.push(value, { ...value, turn: 'up', cost: value.cost + UP, order: value.order + 1 });
      }
    } else if (shape) {
      ready.splice(ready.indexOf(shape), 1);
      yield shape;
    } else return;
  }
}

/** `order`: which comes first of those that are as easy to read. */
type Rated = Shape & { readonly cost: number; readonly order: number };

/** Settings of one size, each narrower than the one before: none is easier to read than `cost` says. */
type Column = { readonly narrower: Iterator<Rated, undefined>; readonly order: number; cost: number };

function columnsOf(paragraphs: readonly Paragraph[], widthOf: TextWidth): Column[] {
  const [title, ...rest] = paragraphs;
  const sizes = sizesOf(SIZES_PT, widthOf);
  const [largest = 0] = sizes;
  const run = title && rest.length > 1 ? [title, { text: rest.map(({ text }) => text).join(' · ') }] : undefined;
  const kinds = [
    { said: paragraphs, widths: WIDTHS_MM, harder: 0 },
    ...(run ? [{ said: run, widths: RUN_WIDTHS_MM, harder: RUN }] : []),
  ];
  const apart = 2 * (WIDTHS_MM.length + RUN_WIDTHS_MM.length);
  return sizes
    .flatMap((size) => kinds.map((kind) => ({ ...kind, size })))
    .map(({ said, widths, harder, size }, at) => {
      const cost = largest - size + harder;
      return { narrower: narrowing(said, { size, widths, cost, order: at * apart }, widthOf), order: at * apart, cost };
    });
}

function* narrowing(
  paragraphs: readonly Paragraph[],
  from: { readonly size: number; readonly widths: readonly Mm[]; readonly cost: number; readonly order: number },
  widthOf: TextWidth,
): Generator<Rated, undefined> {
  const wider = smallestOf(widthOf) / SMALLEST_PT;
  let lines = 0;
  for (const [at, width] of from.widths.entries()) {
    const set = setIn(paragraphs, from.size, width * wider, widthOf);
    if (set.lines.length === lines) continue;
    lines = set.lines.length;
    const cost = from.cost + BROKEN * (lines - paragraphs.length);
    yield { set, turn: 0, cost, order: from.order + 2 * at };
  }
  return undefined;
}

/** The first of those that cost least. */
function easiest<T extends { readonly cost: number; readonly order: number }>(all: readonly T[]): T | undefined {
  let best: T | undefined;
  for (const each of all) {
    if (!best || each.cost < best.cost || (each.cost === best.cost && each.order < best.order)) best = each;
  }
  return best;
}
