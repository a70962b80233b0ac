// Numbers beside the points of a drawing, each where it is read as its own point's.

import { add, left, type Path, type Point, pathLength, pointAtLength, rotate, scale } from '../geometry';
import { boxRound, crossesAny } from './crossing';
import { centred } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** Where a number may stand from its point, mm, the nearest first; inside where there is no room outside. */
const ASIDE_MM = [2.6, 4.2, 6, 8, -2.8, -4.6, -6.5, 10, 12.5];
/** And turned aside from there, radians, where points are crowded. */
const TURNED = [0, 0.6, -0.6, 1.2, -1.2];

/** Clear of lines and points, and nearest to its own point, as far as that can be had. */
export function numbersInk(
  numbers: readonly string[],
  points: readonly Point[],
  outline: readonly Path[],
  strokes: readonly Ink[],
  widthOf: TextWidth,
): readonly Ink[] {
  const dots = points.map((point) => stroke('marks', 'dot', star(point)));
  const words: Ink[] = [];
  for (const [index, at] of points.entries()) {
    const text = numbers[index] ?? '';
    const away = outwards(at, outline);
    const half = widthOf(text, SMALLEST_PT, true) / 2;
    const places = TURNED.flatMap((turn) => ASIDE_MM.map((aside) => add(at, scale(rotate(away, turn), aside))));
    const free = places.filter(
      (place) => !crossesAny(boxRound(place, half + 0.3, SMALLEST_PT, 0), [...strokes, ...dots, ...words], widthOf),
    );
    const own = free.find((place) => isNearest(at, place, points));
    words.push(centred(text, own ?? free[0] ?? places[0] ?? at, SMALLEST_PT, true, widthOf));
  }
  return words;
}

/** A number nearer to another point would be read as that point's. */
const isNearest = (at: Point, place: Point, points: readonly Point[]): boolean =>
  points.every((p) => Math.hypot(at.x - place.x, at.y - place.y) <= Math.hypot(p.x - place.x, p.y - place.y));

/** Away from the piece, square to the nearest edge. */
function outwards(at: Point, outline: readonly Path[]): Point {
  let best = { far: Infinity, out: { x: 0, y: -1 } };
  for (const path of outline) {
    const length = pathLength(path);
    for (let n = 0; n <= 40; n++) {
      const { point, tangent } = pointAtLength(path, (length * n) / 40);
      const far = Math.hypot(point.x - at.x, point.y - at.y);
      if (far < best.far) best = { far, out: left(tangent) };
    }
  }
  return best.out;
}

/** What a dot covers, as lines that words can be seen to cross. */
const star = ({ x, y }: Point): Path => [
  { kind: 'line', from: { x: x - 0.9, y }, to: { x: x + 0.9, y } },
  { kind: 'line', from: { x, y: y - 0.9 }, to: { x, y: y + 0.9 } },
];
