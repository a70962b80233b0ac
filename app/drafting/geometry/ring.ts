// Closed outlines: their area, whether they close, whether they cross themselves.

import { cross, distance, type Point } from '../../body/point';
import type { Curve } from './curve';
import { flatten } from './flatten';
import { end, type Path, start } from './path';

/** How closely a ring is followed when asked whether it crosses itself, mm. */
const FOLLOWED_MM = 0.01;

/** Points nearer than this are one point, mm. */
const SAME_POINT_MM = 1e-9;

/** The area within a ring, mm², exact (Green's theorem): positive where it runs clockwise as seen. */
export function signedArea(path: Path): number {
  const closing = path.length > 0 ? cross(end(path), start(path)) / 2 : 0;
  return path.reduce((sum, curve) => sum + swept(curve), closing);
}

/** Whether each curve starts, and the ring ends, within `tolerance` mm of where it should. */
export function ringIsClosed(path: Path, tolerance: number): boolean {
  let last = path[path.length - 1];
  if (!last) return false;
  for (const curve of path) {
    if (!(distance(last.to, curve.from) <= tolerance)) return false;
    last = curve;
  }
  return true;
}

/** Whether the ring, followed within 0.01 mm, never crosses, touches or doubles back on itself. */
export function ringIsSimple(path: Path): boolean {
  return polygonIsSimple(flatten(path, FOLLOWED_MM));
}

/** The same for a polygon; its first point may come again at its end. Numbers that are not finite are never simple. */
export function polygonIsSimple(polygon: readonly Point[]): boolean {
  const sides = sidesOf(polygon);
  if (sides.length < 3) return false;
  if (sides.some((side) => !Number.isFinite(side.left + side.right + side.a.y + side.b.y))) return false;
  const count = sides.length;
  sides.sort((s, t) => s.left - t.left);
  for (let i = 0; i < count; i += 1) {
    const one = sides[i];
    if (!one) break;
    for (let j = i + 1; j < count; j += 1) {
      const other = sides[j];
      if (!other || other.left > one.right) break;
      if (other.top <= one.bottom && other.bottom >= one.top && clash(one, other, count)) return false;
    }
  }
  return true;
}

type Side = {
  readonly index: number;
  readonly a: Point;
  readonly b: Point;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

function sidesOf(polygon: readonly Point[]): Side[] {
  const corners: Point[] = [];
  for (const p of polygon) {
    const before = corners[corners.length - 1];
    if (!before || distance(before, p) > SAME_POINT_MM) corners.push(p);
  }
  const [home] = corners;
  const last = corners[corners.length - 1];
  if (home && last && corners.length > 1 && distance(home, last) <= SAME_POINT_MM) corners.pop();
  return corners.map((a, index) => side(index, a, corners[index + 1] ?? home ?? a));
}

function side(index: number, a: Point, b: Point): Side {
  return {
    index,
    a,
    b,
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    top: Math.min(a.y, b.y),
    bottom: Math.max(a.y, b.y),
  };
}

/** Two sides clash where they touch; neighbours only where one doubles back along the other. */
function clash(one: Side, other: Side, count: number): boolean {
  const step = (other.index - one.index + count) % count;
  if (step === 1) return doublesBack(one.a, one.b, other.b);
  if (step === count - 1) return doublesBack(other.a, other.b, one.b);
  const c = sideOf(one.a, one.b, other.a);
  const d = sideOf(one.a, one.b, other.b);
  const a = sideOf(other.a, other.b, one.a);
  const b = sideOf(other.a, other.b, one.b);
  return c * d <= 0 && a * b <= 0;
}

function doublesBack(a: Point, b: Point, c: Point): boolean {
  if (sideOf(a, b, c) !== 0) return false;
  return (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;
}

function sideOf(a: Point, b: Point, p: Point): number {
  return Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
}

/** Half the integral of x dy − y dx along a curve. */
function swept(curve: Curve): number {
  const { from, to } = curve;
  if (curve.kind === 'line') return cross(from, to) / 2;
  const { out, into } = curve;
  return (
    (6 * cross(from, out) +
      3 * cross(from, into) +
      cross(from, to) +
      3 * cross(out, into) +
      3 * cross(out, to) +
      6 * cross(into, to)) /
    20
  );
}
