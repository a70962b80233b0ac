// Where straight pieces, lines and chains of points meet.

import { add, cross, distance, type Point, scale, subtract } from '../../body/point';

/** Directions whose cross product is under this do not meet: 1e-9 rad for directions one long. */
const PARALLEL = 1e-9;

/** Where p + s·u meets q + t·v, as s and t; undefined for parallels. */
export function lineMeet(
  p: Point,
  u: Point,
  q: Point,
  v: Point,
): { readonly s: number; readonly t: number } | undefined {
  const turn = cross(u, v);
  if (Math.abs(turn) < PARALLEL) return undefined;
  const step = subtract(q, p);
  return { s: cross(step, v) / turn, t: cross(step, u) / turn };
}

export type Crossing = {
  readonly point: Point;
  /** Which step of the first chain, and of the second, crosses: 0 between its first two points. */
  readonly first: number;
  readonly second: number;
};

/** The crossing met earliest when walking along the first chain; chains that only run along each other do not cross. */
export function firstCrossing(first: readonly Point[], second: readonly Point[]): Crossing | undefined {
  for (let i = 0; i + 1 < first.length; i += 1) {
    const p = first[i];
    const q = first[i + 1];
    if (!p || !q) break;
    let earliest = Number.POSITIVE_INFINITY;
    let index = 0;
    for (let j = 0; j + 1 < second.length; j += 1) {
      const a = second[j];
      const b = second[j + 1];
      if (!a || !b) break;
      const share = crossingShare(p, q, a, b);
      if (share < earliest) [earliest, index] = [share, j];
    }
    if (earliest <= 1)
      return {
        point: add(p, scale(subtract(q, p), earliest)),
        first: i,
        second: index,
      };
  }
  return undefined;
}

/** The chain's beginning, ended with the first point farther along it than `reach` mm. */
export function beginning(chain: readonly Point[], reach: number): readonly Point[] {
  let run = 0;
  for (let i = 1; i < chain.length; i += 1) {
    const p = chain[i - 1];
    const q = chain[i];
    if (!p || !q) break;
    run += distance(p, q);
    if (run > reach) return chain.slice(0, i + 1);
  }
  return chain;
}

/** The share of the way from p to q where a–b is crossed; infinite where it is not. */
function crossingShare(p: Point, q: Point, a: Point, b: Point): number {
  const ux = q.x - p.x;
  const uy = q.y - p.y;
  const vx = b.x - a.x;
  const vy = b.y - a.y;
  const turn = ux * vy - uy * vx;
  if (turn === 0) return Number.POSITIVE_INFINITY;
  const s = ((a.x - p.x) * vy - (a.y - p.y) * vx) / turn;
  if (!(s >= 0 && s <= 1)) return Number.POSITIVE_INFINITY;
  const t = ((a.x - p.x) * uy - (a.y - p.y) * ux) / turn;
  return t >= 0 && t <= 1 ? s : Number.POSITIVE_INFINITY;
}
