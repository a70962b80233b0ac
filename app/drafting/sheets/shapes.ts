import { rotate } from '../geometry';
import { type Ring, type Shape, shapeOf } from '../packing';
import { cornersOf } from '../pieces/outline';
import type { Item } from './fill';

/** Outlines are followed this closely, outwards, mm. */
export const SLACK_MM = 0.5;

/** An item as the engine lays it, with its label's room or without. */
export function shapeOfItem(one: Item, { roomed }: { readonly roomed: boolean }): Shape {
  return shapeOf(ringsOf(one, roomed), SLACK_MM);
}

function ringsOf(one: Item, roomed: boolean): readonly Ring[] {
  const { left, top, width, height } = one.rows;
  if (!('figure' in one)) return [cornersOf({ x: 0, y: 0, width, height })];
  const outline = one.figure.outline.map((p) => rotate(p, one.turn));
  const { room } = one;
  return room && roomed ? [outline, cornersOf({ ...room, x: room.x + left, y: room.y + top })] : [outline];
}
