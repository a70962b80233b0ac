// Whether outlines overlap, asked of two libraries that did not lay them out.

import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import polygonClipping from 'polygon-clipping';
import type { Point } from '../../app/drafting/geometry';
import { ringArea } from '../../app/drafting/packing/polygon';

type Outline = readonly Point[];

const factory = new GeometryFactory();

/** Pairs of outlines that share more than `tolerance` of area by either library. */
export function overlaps(outlines: readonly Outline[], tolerance = 1e-9): readonly (readonly [number, number])[] {
  return outlines.flatMap((one, i) =>
    outlines.flatMap((other, j) =>
      j > i && boxesMeet(one, other) && Math.max(byClipping(one, other), byTopology(one, other)) > tolerance
        ? [[i, j] as const]
        : [],
    ),
  );
}

const STEPS = 25;

/** How far the first's edges lie outside the second at most, by points along them. */
export function outside(one: Outline, other: Outline): number {
  const along = one.flatMap((a, i) => {
    const b = one[(i + 1) % one.length] ?? a;
    return Array.from({ length: STEPS }, (_, n) => ({
      x: a.x + ((b.x - a.x) * n) / STEPS,
      y: a.y + ((b.y - a.y) * n) / STEPS,
    }));
  });
  return Math.max(...along.map((q) => (isInside(q, other) ? 0 : toOutline(q, other))));
}

/** By how often a ray to the right crosses the outline. */
function isInside({ x, y }: Point, outline: Outline): boolean {
  return outline.reduce((inside, a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    if (a.y > y === b.y > y) return inside;
    return x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) ? !inside : inside;
  }, false);
}

/** How far a point is from the nearest edge of an outline. */
export const toOutline = (q: Point, outline: Outline): number =>
  Math.min(...outline.map((a, i) => toEdge(q, a, outline[(i + 1) % outline.length] ?? a)));

function toEdge(q: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.max(0, Math.min(1, ((q.x - a.x) * dx + (q.y - a.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(q.x - a.x - t * dx, q.y - a.y - t * dy);
}

function byClipping(one: Outline, other: Outline): number {
  const shared = polygonClipping.intersection([ringOf(one)], [ringOf(other)]);
  return shared.reduce((sum, [outer = []]) => sum + Math.abs(ringArea(outer.map(([x, y]) => ({ x, y })))), 0);
}

function byTopology(one: Outline, other: Outline): number {
  return OverlayOp.intersection(polygonOf(one), polygonOf(other)).getArea();
}

function polygonOf(outline: Outline) {
  const closed = [...outline, ...outline.slice(0, 1)].map(({ x, y }) => new Coordinate(x, y));
  return factory.createPolygon(closed);
}

const ringOf = (outline: Outline): [number, number][] => outline.map(({ x, y }) => [x, y]);

function boxesMeet(one: Outline, other: Outline): boolean {
  const [a, b] = [boxOf(one), boxOf(other)];
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function boxOf(outline: Outline) {
  const [xs, ys] = [outline.map((p) => p.x), outline.map((p) => p.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
