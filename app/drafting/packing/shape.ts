// What is packed: an outline (or several, as one) in one turn, as convex parts in a box of its own.

import { convexParts } from './convex';
import { type Bounds, boundsOf, type Ring, ringArea } from './polygon';
import { simplified } from './simplify';

/** A convex part and its box. */
export type Part = { readonly ring: Ring } & Bounds;

/** `rings` and their convex `parts` count from the left top corner of the box round the outline; `left` and `top` say where that was. */
export type Shape = {
  readonly rings: readonly Ring[];
  readonly parts: readonly Part[];
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly left: number;
  readonly top: number;
};

/**
 * A shape from outlines that may overlap one another. Outlines are simplified outwards by up to `slack`: nothing of
 * them is lost, a little may be added. `frame`: a larger box that is to stay in its field, while others may reach into it.
 */
export function shapeOf(rings: readonly Ring[], slack: number, frame: Bounds = boundsOf(rings)): Shape {
  const { left, top, right, bottom } = frame;
  const simple = rings.map((ring) =>
    simplified(ring, slack, { left, top, right, bottom }).map(({ x, y }) => ({ x: x - left, y: y - top })),
  );
  const parts = simple.flatMap(convexParts).map((ring): Part => ({ ring, ...boundsOf([ring]) }));
  const area = rings.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
  return { rings: simple, parts, width: right - left, height: bottom - top, area, left, top };
}
