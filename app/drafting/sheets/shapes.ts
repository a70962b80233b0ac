import { rotate } from '../geometry';
import { type Shape, shapeOf } from '../packing';
import { cornersOf } from '../pieces/outline';
import type { Item } from './fill';

/** Outlines are followed this closely, outwards, mm. */
export const SLACK_MM = 0.5;

/** By so much less, mm, pieces and furniture keep off furniture than pieces off one another: no scissors pass there. */
const NEARER_MM = 1;

/** An item as the engine lays it, with its label's room; worked out once, since the same items are laid again and again. */
export function shapeOfItem(one: Item): Shape {
  const shape = known.get(one) ?? shaped(one);
  known.set(one, shape);
  return shape;
}
const known = new WeakMap<Item, Shape>();

function shaped(one: Item): Shape {
  const { left, top, width, height } = one.rows;
  if ('figure' in one) {
    const outline = one.figure.outline.map((p) => rotate(p, one.turn));
    const { room } = one;
    const rings = room ? [outline, cornersOf({ ...room, x: room.x + left, y: room.y + top })] : [outline];
    return shapeOf(rings, SLACK_MM);
  }
  const kept = { x: NEARER_MM, y: NEARER_MM, width: width - 2 * NEARER_MM, height: height - 2 * NEARER_MM };
  return shapeOf([cornersOf(kept)], 0, { left: 0, top: 0, right: width, bottom: height });
}
