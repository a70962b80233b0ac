import type { Mm } from '../../body';
import { cubic, line, type Path, type Point, point } from '../geometry';
import type { Box } from '../packing';
import { type Ink, stroke } from './ink';

/**
 * The toy in the finished garment, as whoever knows its figure draws it: shapes one over the other, each SVG path data
 * of `M`, `C` and `L` in the frame's units, and the name of what it is.
 */
export type WornPicture = {
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly { readonly look: string; readonly path: string }[];
};

/** Grey of each kind of surface; what is not named is a line too fine for paper this small. */
const GREYS: Readonly<Record<string, number>> = {
  fur: 1,
  'fur-deep': 1,
  'fur-pale': 1,
  cloth: 0.86,
  'cloth-deep': 0.76,
  ink: 0,
};
const LINES: readonly string[] = ['edge', 'cloth-line'];

/** The picture within a box, as large as it goes, at its right end. */
export function wornInk({ frame, shapes }: WornPicture, box: Box): readonly Ink[] {
  const scale = Math.min(box.width / frame.width, box.height / frame.height);
  const to = ({ x, y }: Point): Point =>
    point(box.x + box.width - (frame.width - x) * scale, box.y + (box.height - frame.height * scale) / 2 + y * scale);
  return shapes.flatMap(({ look, path }): Ink[] => {
    const grey = GREYS[look];
    if (grey === undefined && !LINES.includes(look)) return [];
    const drawn = pathOf(path, to);
    const outline = stroke('marks', 'rule', drawn, path.endsWith('Z'));
    return grey === undefined ? [outline] : [{ kind: 'fill', layer: 'marks', grey, path: drawn }, outline];
  });
}

/** Path data of one line of curves, placed by `to`. */
function pathOf(data: string, to: (at: Point) => Point): Path {
  const curves: Path[number][] = [];
  let here = point(0, 0);
  for (const [, letter = '', numbers = ''] of data.matchAll(/([MCL])([^MCLZ]*)/g)) {
    const [first, ...rest] = pairsOf(numbers).map(to);
    if (!first) continue;
    const last = rest.at(-1) ?? first;
    if (letter === 'L') curves.push(line(here, first));
    if (letter === 'C' && rest[0] && rest[1]) curves.push(cubic(here, first, rest[0], rest[1]));
    here = letter === 'C' ? last : first;
  }
  return curves;
}

function pairsOf(numbers: string): Point[] {
  const all: Mm[] = numbers
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  return all.flatMap((x, index) => (index % 2 === 0 ? [point(x, all[index + 1] ?? 0)] : []));
}
