// What is packed: an outline (or several, as one) in one turn, as convex parts in a box of its own.

import type { Point } from '../geometry';
import { convexParts } from './convex';
import { boundsOf, type Ring, ringArea } from './polygon';
import { simplified } from './simplify';

/** `parts` count from the left top corner of the box round the outline; `left` and `top` say where that was. */
export type Shape = {
  readonly parts: readonly (readonly Point[])[];
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly left: number;
  readonly top: number;
};

/**
 * A shape from outlines that may overlap one another. Outlines are simplified outwards by up to `slack`: nothing of
 * them is lost, a little may be added.
 */
export function shapeOf(rings: readonly Ring[], slack: number): Shape {
  const { left, top, right, bottom } = boundsOf(rings);
  const parts = rings.flatMap((ring) =>
    convexParts(simplified(ring, slack, { left, top, right, bottom })).map((part) =>
      part.map(({ x, y }) => ({ x: x - left, y: y - top })),
    ),
  );
  const area = rings.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
  return { parts, width: right - left, height: bottom - top, area, left, top };
}
