// Where one shape may not lie beside another: for every two convex parts the sum of the one with the other turned about
// (Minkowski), as half planes. A shift inside any of them is an overlap, and how deep it lies inside says by how much.

import type { Point } from '../geometry';
import { boundsOf, type Ring } from './polygon';
import type { Shape } from './shape';

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
  const mates = other.parts.map((part) => ({ part, box: boundsOf([part]) }));
  const pairs = shape.parts.flatMap((part) => {
    const { left, top, right, bottom } = boundsOf([part]);
    return mates.map(({ part: mate, box }) => {
      const [width, height] = [right - left + box.right - box.left, bottom - top + box.bottom - box.top];
      const corner = { x: left - box.right - apart, y: top - box.bottom - apart };
      return { part, mate, corner, width: width + 2 * apart, height: height + 2 * apart };
    });
  });
  pairs.sort((a, b) => b.width * b.height - a.width * a.height);
  const out: number[] = [];
  for (const { part, mate, corner, width, height } of pairs) {
    const at = out.push(corner.x, corner.y, corner.x + width, corner.y + height, 0) - HEAD;
    addPlanes(out, at, part, mate, 1, apart);
    addPlanes(out, at, mate, part, -1, apart);
  }
  return Float64Array.from(out);
}

/** The same for the two the other way round. */
export function mirrored(sums: Sums): Sums {
  const out = new Float64Array(sums.length);
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    for (let side = 0; side < 4; side += 1) out[at + side] = -(sums[at + ((side + 2) % 4)] as number);
    out[at + 4] = sums[at + 4] as number;
    for (let plane = at + HEAD; plane < end; plane += PLANE) {
      out[plane] = -(sums[plane] as number);
      out[plane + 1] = -(sums[plane + 1] as number);
      out[plane + 2] = sums[plane + 2] as number;
    }
    at = end;
  }
  return out;
}

/** Where the half plane stands by which the last depth was found. A variable, since `depthIn` runs millions of times. */
export let nearestPlane = 0;

/** How deep a shift lies in the deepest of the sums, 0 where in none; some depth of at least `enough` where it is deeper. */
export function depthIn(sums: Sums, x: number, y: number, enough = Infinity): number {
  let deepest = 0;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    if (
      x > (sums[at] as number) &&
      x < (sums[at + 2] as number) &&
      y > (sums[at + 1] as number) &&
      y < (sums[at + 3] as number)
    ) {
      let depth = Infinity;
      let nearest = 0;
      for (let plane = at + HEAD; plane < end; plane += PLANE) {
        const room = (sums[plane + 2] as number) - (sums[plane] as number) * x - (sums[plane + 1] as number) * y;
        if (room < depth) {
          depth = room;
          nearest = plane;
          if (room <= deepest) break;
        }
      }
      if (depth > deepest) {
        deepest = depth;
        nearestPlane = nearest;
        if (depth >= enough) return depth;
      }
    }
    at = end;
  }
  return deepest;
}

/** The same, and how far outside, where it is outside, at least: negative. */
export function signedDepthIn(sums: Sums, x: number, y: number): number {
  let deepest = -Infinity;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    let depth = Infinity;
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
