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

/** Every shape of a label, each once, the easiest to read first; smaller ones are set when they are asked for. */
export function* shapesOf(paragraphs: readonly Paragraph[], widthOf: TextWidth): Generator<Shape> {
  const [title, ...rest] = paragraphs;
  const sizes = sizesOf(SIZES_PT, widthOf);
  const [largest = 0] = sizes;
  const run = title && rest.length > 1 ? [title, { text: rest.map(({ text }) => text).join(' · ') }] : undefined;
  let waiting: readonly Rated[] = [];
  for (const [at, size] of sizes.entries()) {
    const shapes = [
      ...waiting,
      ...rated(paragraphs, size, WIDTHS_MM, widthOf, largest),
      ...(run ? rated(run, size, RUN_WIDTHS_MM, widthOf, largest + RUN) : []),
    ].sort((a, b) => a.cost - b.cost);
    const least = largest - (sizes[at + 1] ?? -Infinity);
    yield* shapes.filter(({ cost }) => cost <= least);
    waiting = shapes.filter(({ cost }) => cost > least);
  }
}

type Rated = Shape & { readonly cost: number };

function rated(
  paragraphs: readonly Paragraph[],
  size: number,
  widths: readonly Mm[],
  widthOf: TextWidth,
  largest: number,
): readonly Rated[] {
  const wider = smallestOf(widthOf) / SMALLEST_PT;
  const sets = widths.map((width) => setIn(paragraphs, size, width * wider, widthOf));
  return sets
    .filter((set, i) => set.lines.length !== sets[i - 1]?.lines.length)
    .flatMap((set): readonly Rated[] => {
      const cost = largest - size + BROKEN * (set.lines.length - paragraphs.length);
      return [
        { set, turn: 0, cost },
        { set, turn: 'up', cost: cost + UP },
      ];
    });
}
