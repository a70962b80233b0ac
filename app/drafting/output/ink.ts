// What is drawn, as data: strokes, fills and words in millimetres on a page. PDF, SVG and screens draw the same ink.

import type { Mm } from '../../body';
import type { Path, Point } from '../geometry';
import type { Print } from '../sheets/prints';

/** Layers of a drawing: cutting machines and projectors take them apart. */
export type Layer = 'cut' | 'seam' | 'marks' | 'words';

/** How a line is drawn. `grey` 0 is black; `cap` round makes dashes look like stitches. */
export type Pen = {
  readonly width: Mm;
  readonly dash: readonly Mm[];
  readonly cap: 'butt' | 'round';
  readonly grey: number;
};

/** No line is thinner than this, mm: 0.35 and a hair, so that rounding keeps it; thinner ones vanish on some printers. */
export const THINNEST_MM = 0.36;

const pen = (width: Mm, dash: readonly Mm[] = [], cap: Pen['cap'] = 'round', grey = 0): Pen => ({
  width,
  dash,
  cap,
  grey,
});

/** Every pen there is. All stay apart in black and white. */
export const pens = {
  cut: pen(0.6),
  seam: pen(THINNEST_MM, [2.4, 1.6], 'butt'),
  fold: pen(0.6, [8, 2, 0.01, 2]),
  inner: pen(THINNEST_MM, [0.01, 1.2]),
  notch: pen(0.6),
  mark: pen(0.4),
  rule: pen(THINNEST_MM, [], 'butt'),
  dot: pen(1.6),
  trim: pen(THINNEST_MM, [0.01, 1.6], 'round', 0.35),
  stitch: pen(0.55, [3, 2.4], 'round', 0.3),
  band: pen(2.2, [], 'butt', 0.72),
  pale: pen(2.2, [], 'butt', 0.88),
} as const satisfies Readonly<Record<string, Pen>>;

/** The same for eyes that need them wide: 1 mm and a hair, what is cut more; dashes as much longer. */
const WIDE_MM = 1.02;
const widePens: Readonly<Record<keyof typeof pens, Pen>> = {
  cut: pen(1.4),
  seam: pen(WIDE_MM, [5, 3.4], 'butt'),
  fold: pen(1.4, [14, 4.5, 0.01, 4.5]),
  inner: pen(WIDE_MM, [0.01, 2.6]),
  notch: pen(1.4),
  mark: pen(WIDE_MM),
  rule: pen(WIDE_MM, [], 'butt'),
  dot: pen(3),
  trim: pen(WIDE_MM, [0.01, 3.4], 'round', 0.35),
  stitch: pen(1.3, [6, 5], 'round', 0.3),
  band: pen(5, [], 'butt', 0.72),
  pale: pen(5, [], 'butt', 0.88),
};

/** The pens of each print. */
export const pensOf: Readonly<Record<Print, Readonly<Record<keyof typeof pens, Pen>>>> = {
  usual: pens,
  large: widePens,
};

export type Stroke = {
  readonly kind: 'stroke';
  readonly layer: Layer;
  readonly pen: keyof typeof pens;
  readonly path: Path;
  readonly closed: boolean;
};

/** A closed outline filled with grey: 0 is black, 1 white. */
export type Fill = { readonly kind: 'fill'; readonly layer: Layer; readonly grey: number; readonly path: Path };

/** Words from the left end of their baseline; `turn` in radians, clockwise as seen, size in points (1/72 in). */
export type Words = {
  readonly kind: 'words';
  readonly layer: Layer;
  readonly at: Point;
  readonly turn: number;
  readonly size: number;
  readonly bold: boolean;
  readonly text: string;
};

export type Ink = Stroke | Fill | Words;

/** Smallest print, points: 7 and a hair, so that turning and rounding keep it. */
export const SMALLEST_PT = 7.05;

/** One point: 1/72 in (ISO 32000-1, 8.3.2.3). */
export const MM_PER_PT = 25.4 / 72;

/** In large print the smallest is 18 points and a hair. */
export const LARGE_PT = 18.05;

/** How wide a text is, mm: whoever draws it knows; which way its lines run, where not rightwards; and in which print it stands, where not the usual one. */
export type TextWidth = {
  (text: string, size: number, bold: boolean): Mm;
  readonly direction?: 'ltr' | 'rtl' | undefined;
  readonly print?: Print | undefined;
};

/** The smallest size that words may have, points. */
export const smallestOf = ({ print }: TextWidth): number => (print === 'large' ? LARGE_PT : SMALLEST_PT);

/** Sizes to try, points, largest first: as they are, or in large print its one size. */
export const sizesOf = (sizes: readonly number[], widthOf: TextWidth): readonly number[] =>
  widthOf.print === 'large' ? [LARGE_PT] : sizes;

export function stroke(layer: Layer, penName: keyof typeof pens, path: Path, closed = false): Stroke {
  return { kind: 'stroke', layer, pen: penName, path, closed };
}
