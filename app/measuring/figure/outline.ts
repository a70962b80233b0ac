import { add, bearing, distance, dot, moved, type Point, right, scale, subtract } from '../../body/point';
import type { Box } from './drawing';

/**
 * Where the straight line through `through` along `direction` leaves the closed `outline` on either side: the nearest
 * crossing backward, then the nearest forward. A line that misses gets `through` itself on the side that misses.
 */
export function across(outline: readonly Point[], through: Point, direction: Point): [Point, Point] {
  const along = bearing(direction);
  const side = right(along);
  let back = Number.NEGATIVE_INFINITY;
  let forth = Number.POSITIVE_INFINITY;
  edgesOf(outline, (from, to) => {
    const [near, far] = [dot(subtract(from, through), side), dot(subtract(to, through), side)];
    if (near > 0 === far > 0) return;
    const share = near / (near - far);
    const reach = dot(subtract(add(from, scale(subtract(to, from), share)), through), along);
    if (reach <= 0) back = Math.max(back, reach);
    else forth = Math.min(forth, reach);
  });
  return [
    moved(through, along, Number.isFinite(back) ? back : 0),
    moved(through, along, Number.isFinite(forth) ? forth : 0),
  ];
}

/**
 * The way along a closed `outline` from near `from` to near `to`, whichever way round passes nearer to `by`; the shorter
 * one when both pass it.
 */
export function along(outline: readonly Point[], from: Point, to: Point, by: Point): Point[] {
  const [first, last] = [nearest(outline, from), nearest(outline, to)];
  const forth = walk(outline, first, last);
  const back = walk(outline, last, first).reverse();
  const [near, far] = forth.length <= back.length ? [forth, back] : [back, forth];
  return gap(near, by) <= gap(far, by) + 1e-6 ? near : far;
}

/** An open line moved sideways by `by` toward `inside`. Its points stay as many as they were. */
export function inset(line: readonly Point[], by: number, inside: Point): Point[] {
  return line.map((here, index) => {
    const [before, after] = [line[index - 1] ?? here, line[index + 1] ?? here];
    const normal = right(bearing(subtract(after, before)));
    const sign = dot(normal, subtract(inside, here)) >= 0 ? 1 : -1;
    return moved(here, normal, sign * by);
  });
}

/** Where two closed outlines cross. */
export function crossings(one: readonly Point[], other: readonly Point[]): Point[] {
  const found: Point[] = [];
  edgesOf(one, (a, b) => {
    const [low, high] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
    edgesOf(other, (c, d) => {
      // Most pairs of edges lie apart: said before anything is worked out.
      if ((c.y < low && d.y < low) || (c.y > high && d.y > high)) return;
      const [run, cut, offset] = [subtract(b, a), subtract(d, c), subtract(c, a)];
      const spread = run.x * cut.y - run.y * cut.x;
      const s = (offset.x * cut.y - offset.y * cut.x) / spread;
      const t = (offset.x * run.y - offset.y * run.x) / spread;
      if (s >= 0 && s < 1 && t >= 0 && t < 1) found.push(add(a, scale(run, s)));
    });
  });
  return found;
}

/** The smallest upright box round all points; an empty list gives a box at the origin. */
export function boundsOf(points: readonly Point[]): Box {
  if (points.length === 0) return { left: 0, top: 0, right: 0, bottom: 0 };
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

function edgesOf(outline: readonly Point[], see: (from: Point, to: Point) => void) {
  outline.forEach((from, index) => {
    see(from, outline[(index + 1) % outline.length] ?? from);
  });
}

const gap = (line: readonly Point[], to: Point) => Math.min(...line.map((here) => distance(here, to)));

function nearest(outline: readonly Point[], to: Point): number {
  const gaps = outline.map((here) => distance(here, to));
  return gaps.indexOf(Math.min(...gaps));
}

function walk(outline: readonly Point[], from: number, to: number): Point[] {
  const steps = (to - from + outline.length) % outline.length;
  return Array.from({ length: steps + 1 }, (_, step) => outline[(from + step) % outline.length] ?? { x: 0, y: 0 });
}
