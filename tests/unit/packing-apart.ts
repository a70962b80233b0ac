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

/** How much of the first lies outside the second, by area. */
export function outside(one: Outline, other: Outline): number {
  const rest = polygonClipping.difference([ringOf(one)], [ringOf(other)]);
  return rest.flat().reduce((sum, ring) => sum + Math.abs(ringArea(ring.map(([x, y]) => ({ x, y })))), 0);
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
