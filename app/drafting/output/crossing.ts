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
  const around = boundsOf(line);
  return ink.some((each) => {
    const outline = inkOutline(each, widthOf);
    return meet(line, around, outline) || holds(line, outline[0]) || (each.kind === 'words' && holds(outline, line[0]));
  });
}

/** A line, or the box round words; found once for each ink. */
export function inkOutline(ink: Ink, widthOf: TextWidth): readonly Point[] {
  const known = outlines.get(widthOf) ?? new WeakMap<Ink, readonly Point[]>();
  outlines.set(widthOf, known);
  const outline = known.get(ink) ?? outlined(ink, widthOf);
  known.set(ink, outline);
  return outline;
}
const outlines = new WeakMap<TextWidth, WeakMap<Ink, readonly Point[]>>();

function outlined(ink: Ink, widthOf: TextWidth): readonly Point[] {
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

type Bounds = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

function boundsOf(line: readonly Point[]): Bounds {
  const bounds = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const { x, y } of line) {
    bounds.left = Math.min(bounds.left, x);
    bounds.right = Math.max(bounds.right, x);
    bounds.top = Math.min(bounds.top, y);
    bounds.bottom = Math.max(bounds.bottom, y);
  }
  return bounds;
}

/** Whether two lines of points cross anywhere; `around` the first one. */
function meet(one: readonly Point[], { left, top, right, bottom }: Bounds, other: readonly Point[]): boolean {
  for (let j = 1; j < other.length; j += 1) {
    const [c, d] = [other[j - 1], other[j]];
    if (!c || !d) continue;
    if (Math.max(c.x, d.x) < left || Math.min(c.x, d.x) > right) continue;
    if (Math.max(c.y, d.y) < top || Math.min(c.y, d.y) > bottom) continue;
    for (let i = 1; i < one.length; i += 1) {
      const [a, b] = [one[i - 1], one[i]];
      if (a && b && side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return true;
    }
  }
  return false;
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
