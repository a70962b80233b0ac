// Where one shape may not lie beside another: for every two convex parts the sum of the one with the other turned about
// (Minkowski), as half planes. A shift inside any of them is an overlap, and how deep it lies inside says by how much.
// Shifts are those of the middle of the one's box from the middle of the other's.

import type { Point } from '../geometry';
import { turn } from './alike';
import type { Ring } from './polygon';
import type { Part, Shape } from './shape';

/**
 * One after the other, for each two parts: the box left, top, right, bottom; how many half planes; each of them as
 * normal x, normal y, reach. A shift d is inside where normal · d < reach for all of them.
 */
export type Sums = Float64Array;

/** How many numbers stand before the half planes of two parts, and how many each half plane takes. */
export const HEAD = 5;
export const PLANE = 3;
/** Normals nearer than this are one: their half planes differ by rounding. */
const SAME_NORMAL = 1e-9;

/** The shifts of `other`, seen from `shape`, that overlap it: all half planes are moved outwards by `apart`. */
export function sumsOf(shape: Shape, other: Shape, apart: number): Sums {
  const pairs = shape.parts.flatMap((part) => other.parts.map((mate) => ({ part, mate, size: sizeOf(part, mate) })));
  pairs.sort((a, b) => b.size - a.size);
  const out: number[] = [];
  const [x, y] = [(other.width - shape.width) / 2, (other.height - shape.height) / 2];
  for (const { part, mate } of pairs) {
    const [left, top] = [part.left - mate.right - apart + x, part.top - mate.bottom - apart + y];
    const [right, bottom] = [part.right - mate.left + apart + x, part.bottom - mate.top + apart + y];
    const at = out.length;
    out.push(left, top, right, bottom, 0);
    addPlanes(out, at, part.ring, mate.ring, 1, apart);
    addPlanes(out, at, mate.ring, part.ring, -1, apart);
    for (let plane = at + HEAD; plane < out.length; plane += PLANE) {
      out[plane + 2] = (out[plane + 2] as number) + (out[plane] as number) * x + (out[plane + 1] as number) * y;
    }
  }
  return Float64Array.from(out);
}

function sizeOf(part: Part, mate: Part): number {
  return (part.right - part.left + mate.right - mate.left) * (part.bottom - part.top + mate.bottom - mate.top);
}

/** The same for both after quarter turns; half a turn is also how the one is seen from the other. */
export function turnedSums(sums: Sums, quarters: number): Sums {
  if (quarters === 0) return sums;
  const out = new Float64Array(sums.length);
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    const one = turn(sums[at] as number, sums[at + 1] as number, quarters);
    const other = turn(sums[at + 2] as number, sums[at + 3] as number, quarters);
    out[at] = Math.min(one.x, other.x);
    out[at + 1] = Math.min(one.y, other.y);
    out[at + 2] = Math.max(one.x, other.x);
    out[at + 3] = Math.max(one.y, other.y);
    out[at + 4] = sums[at + 4] as number;
    for (let plane = at + HEAD; plane < end; plane += PLANE) {
      const normal = turn(sums[plane] as number, sums[plane + 1] as number, quarters);
      out[plane] = normal.x;
      out[plane + 1] = normal.y;
      out[plane + 2] = sums[plane + 2] as number;
    }
    at = end;
  }
  return out;
}

/**
 * How deep a shift lies in the deepest of the sums, or how far outside all of them, at least: negative. Moved outwards, the
 * half planes of a sharp corner reach beyond the box: there nothing overlaps.
 */
export function signedDepthIn(sums: Sums, x: number, y: number): number {
  let deepest = -Infinity;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    const inBox = Math.min(
      x - (sums[at] as number),
      y - (sums[at + 1] as number),
      (sums[at + 2] as number) - x,
      (sums[at + 3] as number) - y,
    );
    let depth = inBox > 0 ? Infinity : inBox;
    for (let plane = at + HEAD; plane < end && depth > deepest; plane += PLANE) {
      const room = (sums[plane + 2] as number) - (sums[plane] as number) * x - (sums[plane + 1] as number) * y;
      if (room < depth) depth = room;
    }
    if (depth > deepest) deepest = depth;
    at = end;
  }
  return deepest;
}

/** The half planes that the edges of `ring` give to the sum at `at`; `sign` is -1 where it is the ring that was turned about. */
function addPlanes(out: number[], at: number, ring: Ring, mate: Ring, sign: number, apart: number): void {
  let p = ring[ring.length - 1] as Point;
  for (const q of ring) {
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    const [x, y] = [(sign * (q.y - p.y)) / length, (sign * (p.x - q.x)) / length];
    if (length > 0 && !isKnown(out, at, x, y)) {
      out.push(x, y, sign * (p.x * x + p.y * y) + reach(mate, -sign * x, -sign * y) + apart);
      out[at + 4] = (out[at + 4] as number) + 1;
    }
    p = q;
  }
}

function isKnown(out: readonly number[], at: number, x: number, y: number): boolean {
  for (let plane = at + HEAD; plane < out.length; plane += PLANE) {
    if (Math.abs((out[plane] as number) - x) + Math.abs((out[plane + 1] as number) - y) < SAME_NORMAL) return true;
  }
  return false;
}

/** How far a ring reaches along a direction. */
function reach(ring: Ring, x: number, y: number): number {
  let most = -Infinity;
  for (const p of ring) most = Math.max(most, p.x * x + p.y * y);
  return most;
}
