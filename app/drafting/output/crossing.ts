// Whether ink would lie over ink: words keep clear of lines, and of each other.

import { add, cross, flatten, type Point, rotate, subtract } from '../geometry';
import { type Ink, MM_PER_PT, type TextWidth } from './ink';

/** How closely lines are followed, mm. */
const FOLLOWED_MM = 0.2;

/** What words reach above and below their middle, as a share of their size. */
const HALF_HEIGHT_SHARE = 0.5;

/** The first of some ink that a line of points crosses. */
export function crossesAny(line: readonly Point[], ink: readonly Ink[], widthOf: TextWidth): boolean {
  return ink.some((each) => meet(line, inkOutline(each, widthOf)));
}

/** A line, or the box round words. */
export function inkOutline(ink: Ink, widthOf: TextWidth): readonly Point[] {
  if (ink.kind !== 'words') return flatten(ink.path, FOLLOWED_MM);
  const half = widthOf(ink.text, ink.size, ink.bold) / 2;
  const up = ink.size * MM_PER_PT * HALF_HEIGHT_SHARE;
  return boxRound(add(ink.at, rotate({ x: half, y: -up }, ink.turn)), half, ink.size, ink.turn);
}

/** The closed box round words of a size, in points, by their middle and half their width. */
export function boxRound(middle: Point, half: number, size: number, turn: number): readonly Point[] {
  const high = size * MM_PER_PT * HALF_HEIGHT_SHARE;
  const corners = [
    { x: -half, y: -high },
    { x: half, y: -high },
    { x: half, y: high },
    { x: -half, y: high },
    { x: -half, y: -high },
  ];
  return corners.map((corner) => add(middle, rotate(corner, turn)));
}

/** Whether two lines of points cross anywhere. */
function meet(one: readonly Point[], other: readonly Point[]): boolean {
  return one.some((b, i) => {
    const a = one[i - 1];
    if (!a) return false;
    return other.some((d, j) => {
      const c = other[j - 1];
      return c !== undefined && side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    });
  });
}

function side(a: Point, b: Point, p: Point): number {
  return cross(subtract(b, a), subtract(p, a));
}
