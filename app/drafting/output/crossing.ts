// Whether ink would lie over ink: words keep clear of lines, and of each other.

import { add, cross, flatten, type Point, rotate, subtract } from '../geometry';
import { type Ink, MM_PER_PT, type TextWidth } from './ink';

/** How closely lines are followed, mm. */
const FOLLOWED_MM = 0.2;

/** What words reach above and below their middle, as a share of their size. */
const HALF_HEIGHT_SHARE = 0.5;

/** A closed box, its first corner again at the end. */
const BOX_POINTS = 5;

/** Whether a line of points, or a closed box, crosses any of some ink or has it within. */
export function crossesAny(line: readonly Point[], ink: readonly Ink[], widthOf: TextWidth): boolean {
  return ink.some((each) => {
    const outline = inkOutline(each, widthOf);
    return meet(line, outline) || holds(line, outline[0]) || (each.kind === 'words' && holds(outline, line[0]));
  });
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

/** Whether a closed box round words has a point within. */
function holds(box: readonly Point[], p: Point | undefined): boolean {
  if (box.length < BOX_POINTS || !p) return false;
  const sides = box.slice(1).map((b, i) => Math.sign(side(box[i] ?? b, b, p)));
  return Math.abs(sides.reduce((sum, each) => sum + each, 0)) === sides.length;
}

function side(a: Point, b: Point, p: Point): number {
  return cross(subtract(b, a), subtract(p, a));
}
