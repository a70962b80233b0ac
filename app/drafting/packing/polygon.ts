// Rings of points, the last joined to the first: area, box, which side.

import type { Point } from '../geometry';

/** A closed outline, the first point not repeated. */
export type Ring = readonly Point[];

/** Twice the area of the triangle a, b, c: positive where it turns from x towards y. */
export function cross(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** The shoelace area: positive where the ring runs from x towards y (clockwise as seen, y down). */
export function ringArea(ring: Ring): number {
  let twice = 0;
  let before = ring[ring.length - 1];
  for (const p of ring) {
    if (before) twice += before.x * p.y - p.x * before.y;
    before = p;
  }
  return twice / 2;
}

export type Bounds = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** The box round all rings. */
export function boundsOf(rings: readonly Ring[]): Bounds {
  const bounds = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const ring of rings) {
    for (const { x, y } of ring) {
      bounds.left = Math.min(bounds.left, x);
      bounds.top = Math.min(bounds.top, y);
      bounds.right = Math.max(bounds.right, x);
      bounds.bottom = Math.max(bounds.bottom, y);
    }
  }
  return bounds;
}
