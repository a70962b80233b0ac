// Where one shape may not lie beside another: for every two convex parts the sum of the one with the other turned about
// (Minkowski), as half planes. A shift inside any of them is an overlap, and how deep it lies inside says by how much.

import type { Point } from '../geometry';
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
  const out: number[] = [];
  const pairs = shape.parts.flatMap((part) => other.parts.map((mate) => ({ part, mate })));
  const sums = pairs.map(({ part, mate }) => sumOf(part, mate, apart)).sort((a, b) => b.size - a.size);
  for (const { box, planes } of sums) out.push(...box, planes.length / PLANE, ...planes);
  return Float64Array.from(out);
}

/** Where the half plane stands by which the last depth was found. A variable, since `depthIn` runs millions of times. */
export let nearestPlane = 0;

/** How deep a shift lies in the deepest of the sums, 0 where in none. */
export function depthIn(sums: Sums, x: number, y: number): number {
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
      }
    }
    at = end;
  }
  return deepest;
}

type Sum = { readonly box: readonly number[]; readonly planes: readonly number[]; readonly size: number };

function sumOf(part: readonly Point[], mate: readonly Point[], apart: number): Sum {
  const back = mate.map(({ x, y }) => ({ x: -x, y: -y }));
  const normals: Point[] = [];
  for (const ring of [part, back]) {
    ring.forEach((p, index) => {
      const q = ring[(index + 1) % ring.length] as Point;
      const length = Math.hypot(q.x - p.x, q.y - p.y);
      if (length === 0) return;
      const normal = { x: (q.y - p.y) / length, y: (p.x - q.x) / length };
      if (!normals.some(({ x, y }) => Math.abs(x - normal.x) + Math.abs(y - normal.y) < SAME_NORMAL)) {
        normals.push(normal);
      }
    });
  }
  const planes = normals.flatMap((normal) => [normal.x, normal.y, reach(part, normal) + reach(back, normal) + apart]);
  const side = (x: number, y: number): number => reach(part, { x, y }) + reach(back, { x, y }) + apart;
  const box = [-side(-1, 0), -side(0, -1), side(1, 0), side(0, 1)];
  const size = ((box[2] as number) - (box[0] as number)) * ((box[3] as number) - (box[1] as number));
  return { box, planes, size };
}

/** How far a part reaches along a direction. */
function reach(part: readonly Point[], { x, y }: Point): number {
  let most = -Infinity;
  for (const p of part) most = Math.max(most, p.x * x + p.y * y);
  return most;
}
