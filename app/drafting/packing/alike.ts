// Which shapes are the same one, turned: what is known of two of them is known of all that lie to each other as they do.

import type { Point } from '../geometry';
import type { Shape } from './shape';

/** Corners nearer than this share of a shape's size are one: turning an outline moves them by rounding. */
const SAME_SHARE = 1e-9;

/** Quarter turns in a whole one. */
export const QUARTERS = 4;

/**
 * Of every two shapes, row by row, the resting one first: the number of what they are to each other, and the quarter turns
 * to them from the first two that are so. Seen the other way round is turned by half.
 */
export type Relations = {
  readonly count: number;
  readonly of: Int32Array;
  readonly quarters: Uint8Array;
};

export function relationsOf(shapes: readonly Shape[]): Relations {
  const kinds = alike(shapes);
  const most = shapes.length;
  const numbers = new Int32Array(most * most * QUARTERS).fill(-1);
  const of = new Int32Array(most * most);
  const quarters = new Uint8Array(most * most);
  let count = 0;
  let at = 0;
  for (const one of kinds) {
    for (const other of kinds) {
      const between = (other.quarters - one.quarters + QUARTERS) % QUARTERS;
      const isBack = one.kind > other.kind || (one.kind === other.kind && between === 3);
      const [first, second] = isBack ? [other, one] : [one, other];
      const key = (first.kind * most + second.kind) * QUARTERS + (isBack ? (QUARTERS - between) % QUARTERS : between);
      if (numbers[key] === -1) numbers[key] = count++;
      of[at] = numbers[key] as number;
      quarters[at] = isBack ? (first.quarters + 2) % QUARTERS : first.quarters;
      at += 1;
    }
  }
  return { count, of, quarters };
}

/** The kind of a shape, and the quarter turns from the first shape of its kind to it. */
type Alike = { readonly kind: number; readonly quarters: number };

function alike(shapes: readonly Shape[]): readonly Alike[] {
  const firsts: Shape[] = [];
  return shapes.map((shape) => {
    for (let kind = 0; kind < firsts.length; kind += 1) {
      for (let quarters = 0; quarters < QUARTERS; quarters += 1) {
        if (isTurned(firsts[kind] as Shape, shape, quarters)) return { kind, quarters };
      }
    }
    return { kind: firsts.push(shape) - 1, quarters: 0 };
  });
}

/** Whether `shape` is `first` after so many quarter turns, clockwise as seen. */
function isTurned(first: Shape, shape: Shape, quarters: number): boolean {
  const near = SAME_SHARE * Math.max(first.width, first.height);
  const [width, height] = quarters % 2 === 0 ? [first.width, first.height] : [first.height, first.width];
  if (Math.abs(width - shape.width) > near || Math.abs(height - shape.height) > near) return false;
  if (first.rings.length !== shape.rings.length) return false;
  return first.rings.every((ring, index) => {
    const moved = ring.map(({ x, y }) => {
      const turned = turn(x - first.width / 2, y - first.height / 2, quarters);
      return { x: turned.x + width / 2, y: turned.y + height / 2 };
    });
    return isSame(moved, shape.rings[index] ?? [], near);
  });
}

/** A vector after quarter turns, clockwise as seen. */
export function turn(x: number, y: number, quarters: number): Point {
  if (quarters === 0) return { x, y };
  if (quarters === 2) return { x: -x, y: -y };
  return quarters === 1 ? { x: -y, y: x } : { x: y, y: -x };
}

/** Whether two rings run through the same corners, wherever they begin. */
function isSame(one: readonly Point[], other: readonly Point[], near: number): boolean {
  const n = one.length;
  if (n !== other.length) return false;
  const isAt = (p: Point, q: Point): boolean => Math.abs(p.x - q.x) <= near && Math.abs(p.y - q.y) <= near;
  return other.some((_, start) => one.every((p, index) => isAt(p, other[(start + index) % n] as Point)));
}
