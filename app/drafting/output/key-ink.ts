// What the lines and notches of a pattern mean: a sample of each, and its words beside it.

import type { Mm } from '../../body';
import { line, type Path, point } from '../geometry';
import type { Box } from '../packing';
import type { Form } from '../sheets/forms';
import { keyColumns } from '../sheets/notes';
import { arrowHead } from './arrow';
import { setWithin, wordsOf } from './flow';
import { type Ink, type pens, SMALLEST_PT, stroke, type TextWidth } from './ink';
import type { Lettering } from './lettering';

const SIZES_PT = [8, 7.5, SMALLEST_PT];
const SAMPLE_MM = 10;
const BESIDE_MM = 2;

/** The samples in as many columns as the box has room for, its height shared among the lines. */
export function keyInk(box: Box, form: Form, { say, widthOf }: Lettering): readonly Ink[] {
  const columns = keyColumns(box.width);
  const shown = samples.filter(({ code }) => form === 'cut' || code !== 'seam');
  const rows = Math.ceil(shown.length / columns);
  const height = box.height / rows;
  const texts = shown.map(({ code }) => say(code === 'cut' ? `print.key.${form}` : `print.key.${code}`));
  const beside = SAMPLE_MM + (columns > 1 ? 2 : 1) * BESIDE_MM;
  const needs = Array.from(
    { length: columns },
    (_, n) => beside + widest(texts.slice(n * rows, (n + 1) * rows), widthOf),
  );
  const widths = shared(box.width, needs);
  const leftwards = widthOf.direction === 'rtl';
  return shown.flatMap(({ draw }, index) => {
    const column = Math.floor(index / rows);
    const y = box.y + (index % rows) * height;
    const room = (widths[column] ?? 0) - beside;
    const before = widths.slice(0, column).reduce((sum, each) => sum + each, 0);
    const x = leftwards ? box.x + box.width - before - SAMPLE_MM : box.x + before;
    const place = { x: leftwards ? x - BESIDE_MM - room : x + SAMPLE_MM + BESIDE_MM, y, width: room, height };
    const words = setWithin([{ text: texts[index] ?? '' }], place, SIZES_PT, widthOf);
    const middle = { ...place, y: y + (height - words.height) / 2 };
    return [...draw(x, y + height / 2), ...wordsOf(words, middle, 'words')];
  });
}

const widest = (texts: readonly string[], widthOf: TextWidth): Mm =>
  Math.max(0, ...texts.map((text) => widthOf(text, SMALLEST_PT, false)));

/** Columns alike, unless one needs more than its share and the others can spare it. */
function shared(width: Mm, needs: readonly Mm[]): readonly Mm[] {
  const equal = width / needs.length;
  const spare = width - needs.reduce((sum, need) => sum + need, 0);
  return spare < 0 || needs.every((need) => need <= equal)
    ? needs.map(() => equal)
    : needs.map((need) => need + spare / needs.length);
}

type Sample = { readonly code: string; readonly draw: (x: Mm, y: Mm) => readonly Ink[] };

const level = (x: Mm, y: Mm, long = SAMPLE_MM): Path => [line(point(x, y), point(x + long, y))];
const pen = (name: keyof typeof pens) => (x: Mm, y: Mm) => [stroke('marks', name, level(x, y))];

/** A sample is too short for a dash, a dot and a dash: half a dash on either side of the dot. */
const foldParts = [
  [0, 3],
  [5, 5.01],
  [7, SAMPLE_MM],
] as const;

/** A notch crosses the allowance, from the line to sew out to the line to cut. */
const notch = (x: Mm, y: Mm, at: readonly Mm[]) =>
  at.map((each) => stroke('marks', 'notch', [line(point(x + each, y - 1.5), point(x + each, y + 1.5))]));

const samples: readonly Sample[] = [
  { code: 'cut', draw: pen('cut') },
  { code: 'seam', draw: pen('seam') },
  {
    code: 'fold',
    draw: (x, y) => foldParts.map(([from, to]) => stroke('marks', 'fold', level(x + from, y, to - from))),
  },
  { code: 'inner', draw: pen('inner') },
  { code: 'notch', draw: (x, y) => notch(x, y, [1, 7, 9.5]) },
  {
    code: 'grain',
    draw: (x, y) => [
      stroke('marks', 'mark', level(x, y)),
      stroke('marks', 'mark', arrowHead(point(x + SAMPLE_MM, y), point(1, 0))),
    ],
  },
];
