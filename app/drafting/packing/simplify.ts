// An outline with fewer corners that holds all of the one it was made from.

import type { Point } from '../geometry';
import { type Bounds, cross, type Ring, ringArea } from './polygon';

/**
 * Takes corners out of a simple ring, the cheapest in area first, as long as the ring only grows, nowhere by more than
 * `slack`, and stays within `bounds` (which the ring touches: its box stays what it was) and simple.
 */
export function simplified(ring: Ring, slack: number, bounds: Bounds): Ring {
  const points = clean(ringArea(ring) < 0 ? [...ring].reverse() : [...ring]);
  if (slack <= 0) return points;
  const known = new Map<Point, Change | undefined>();
  for (;;) {
    let best: Change | undefined;
    let where = 0;
    for (let at = 0; at < points.length && points.length > 3; at += 1) {
      const here = points[at] as Point;
      if (!known.has(here)) known.set(here, changeAt(points, at, slack, bounds));
      const change = known.get(here);
      if (!change || (best && change.added >= best.added)) continue;
      best = change;
      where = at;
    }
    if (!best) return points;
    if (!isFree(points, where, best)) known.set(points[where] as Point, undefined);
    else {
      for (let step = -REACH; step <= REACH; step += 1) known.delete(corner(points, where + step));
      apply(points, where, best);
    }
  }
}

/** A change touches what may change at corners this far before and behind. */
const REACH = 3;

/** Takes out `count` corners and puts `corner`, if any, in their place; `added` is the area gained. */
type Change = { readonly count: 1 | 2; readonly corner?: Point; readonly added: number };

/** A hollow corner goes by itself; an edge between two bulging ones goes by drawing its neighbours out till they meet. */
function changeAt(points: readonly Point[], at: number, slack: number, bounds: Bounds): Change | undefined {
  const before = corner(points, at - 1);
  const here = corner(points, at);
  const after = corner(points, at + 1);
  const turn = cross(before, here, after);
  if (turn <= 0) {
    const chord = Math.hypot(after.x - before.x, after.y - before.y);
    if (chord === 0 || -turn / chord > slack) return undefined;
    return { count: 1, added: -turn / 2 };
  }
  const then = corner(points, at + 2);
  if (points.length < 4 || cross(here, after, then) <= 0) return undefined;
  const met = meeting(before, here, then, after);
  if (!met) return undefined;
  const edge = Math.hypot(after.x - here.x, after.y - here.y);
  const added = cross(here, met, after);
  if (added < 0 || added / edge > slack) return undefined;
  const { left, top, right, bottom } = bounds;
  if (met.x < left || met.x > right || met.y < top || met.y > bottom) return undefined;
  return { count: 2, corner: met, added: added / 2 };
}

/** Where the line a → b, going on beyond b, meets c → d going on beyond d. */
function meeting(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const [vx, vy] = [d.x - c.x, d.y - c.y];
  const across = ux * vy - uy * vx;
  if (across === 0) return undefined;
  const t = ((d.x - b.x) * vy - (d.y - b.y) * vx) / across;
  const s = ((d.x - b.x) * uy - (d.y - b.y) * ux) / across;
  return t > 0 && s > 0 ? { x: b.x + ux * t, y: b.y + uy * t } : undefined;
}

/** Whether the new edges cross none of those that stay. */
function isFree(points: readonly Point[], at: number, { count, corner: met }: Change): boolean {
  const [from, to] = [corner(points, at - 1), corner(points, at + count)];
  const path = met ? [from, met, to] : [from, to];
  for (let step = count + 1; step < points.length; step += 1) {
    const [a, b] = [corner(points, at + step - 1), corner(points, at + step)];
    for (let each = 1; each < path.length; each += 1) {
      if (touches(path[each - 1] as Point, path[each] as Point, a, b)) return false;
    }
  }
  return true;
}

function touches(a: Point, b: Point, c: Point, d: Point): boolean {
  if (a === c || a === d || b === c || b === d) return false;
  const [one, two, three, four] = [cross(a, b, c), cross(a, b, d), cross(c, d, a), cross(c, d, b)];
  return one * two <= 0 && three * four <= 0;
}

function apply(points: Point[], at: number, { count, corner: met }: Change): void {
  const first = points.splice(at, count);
  if (first.length < count) points.splice(0, count - first.length);
  if (met) points.splice(Math.min(at, points.length), 0, met);
}

function corner(points: readonly Point[], index: number): Point {
  const n = points.length;
  return points[(index + n) % n] as Point;
}

/** Without points that come twice or lie on the line between their neighbours. */
function clean(points: Point[]): Point[] {
  const distinct = points.filter((p, index) => {
    const before = points[(index + points.length - 1) % points.length] as Point;
    return p.x !== before.x || p.y !== before.y;
  });
  return distinct.filter((p, index) => {
    const before = distinct[(index + distinct.length - 1) % distinct.length] as Point;
    const after = distinct[(index + 1) % distinct.length] as Point;
    return cross(before, p, after) !== 0 || (p.x - before.x) * (after.x - p.x) + (p.y - before.y) * (after.y - p.y) < 0;
  });
}
