// A ring as few convex parts: cut into triangles, then joined again wherever the join stays convex.

import type { Point } from '../geometry';
import { cross, ringArea } from './polygon';

/**
 * Convex parts whose union is the ring, each with a positive area by the shoelace formula (clockwise as seen, y down).
 * The ring is simple, of either winding. Ear clipping, then the diagonals that are not needed are taken out (Hertel and
 * Mehlhorn 1983): at most four times as many parts as the fewest.
 */
export function convexParts(ring: readonly Point[]): readonly (readonly Point[])[] {
  const points = ringArea(ring) < 0 ? [...ring].reverse() : [...ring];
  const parts = triangles(points);
  while (joinTwo(parts, points));
  return parts.map((part) => part.map((at) => points[at] as Point));
}

type Part = number[];

function triangles(points: readonly Point[]): Part[] {
  const left = points.map((_, index) => index);
  const out: Part[] = [];
  while (left.length > 3) {
    const ear = findEar(left, points);
    const [before, at, after] = around(left, ear);
    if (turn(points, before, at, after) > 0) out.push([before, at, after]);
    left.splice(ear, 1);
  }
  if (left.length === 3 && turn(points, left[0] as number, left[1] as number, left[2] as number) > 0) out.push(left);
  return out;
}

/** The ear with the shortest diagonal keeps triangles plump; where rounding leaves none, the flattest corner. */
function findEar(left: readonly number[], points: readonly Point[]): number {
  let best = -1;
  let shortest = Infinity;
  for (let index = 0; index < left.length; index += 1) {
    const [before, at, after] = around(left, index);
    if (turn(points, before, at, after) <= 0) continue;
    const [a, b, c] = [points[before] as Point, points[at] as Point, points[after] as Point];
    const length = Math.hypot(c.x - a.x, c.y - a.y);
    if (length >= shortest) continue;
    const inside = left.some((other) => {
      if (other === before || other === at || other === after) return false;
      const p = points[other] as Point;
      if ((p.x === a.x && p.y === a.y) || (p.x === c.x && p.y === c.y)) return false;
      return cross(a, b, p) >= 0 && cross(b, c, p) >= 0 && cross(c, a, p) >= 0;
    });
    if (inside) continue;
    best = index;
    shortest = length;
  }
  if (best >= 0) return best;
  const flat = left.map((_, index) => Math.abs(turn(points, ...around(left, index))));
  return flat.indexOf(Math.min(...flat));
}

function around(left: readonly number[], index: number): [number, number, number] {
  const n = left.length;
  return [left[(index + n - 1) % n] as number, left[index] as number, left[(index + 1) % n] as number];
}

function turn(points: readonly Point[], a: number, b: number, c: number): number {
  return cross(points[a] as Point, points[b] as Point, points[c] as Point);
}

/** Joins the first two parts that share an edge and are convex together; false where there are none. */
function joinTwo(parts: Part[], points: readonly Point[]): boolean {
  for (let one = 0; one < parts.length; one += 1) {
    for (let two = one + 1; two < parts.length; two += 1) {
      const joined = join(parts[one] as Part, parts[two] as Part, points);
      if (!joined) continue;
      parts[one] = joined;
      parts.splice(two, 1);
      return true;
    }
  }
  return false;
}

function join(a: Part, b: Part, points: readonly Point[]): Part | undefined {
  for (let at = 0; at < a.length; at += 1) {
    const from = a[at] as number;
    const to = a[(at + 1) % a.length] as number;
    const met = b.indexOf(to);
    if (met < 0 || b[(met + 1) % b.length] !== from) continue;
    const first = [...a.slice(at + 1), ...a.slice(0, at + 1)];
    const second = [...b.slice(met + 1), ...b.slice(0, met + 1)];
    const joined = [...first, ...second.slice(1, -1)];
    return joined.every((_, index) => turn(points, ...around(joined, index)) >= 0) ? joined : undefined;
  }
  return undefined;
}
