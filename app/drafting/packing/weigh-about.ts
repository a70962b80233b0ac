import { lookUp, NEARLY, VIEW } from './chart';
import { BOX, type Lay, PLACE_WORK } from './lay';
import type { Rated } from './weigh';

/** Whether the piece about weighs less there than `place.weight`, which then says how much. */
export function weighAbout(lay: Lay, piece: number, place: Rated): boolean {
  lay.steps += 1;
  lay.work += PLACE_WORK;
  const { around, boxes, shape: shapes, weights, count, charts, floor } = lay;
  const { shape, weight: enough } = place;
  const halfWidth = 0.5 * (lay.widths[shape] as number);
  const halfHeight = 0.5 * (lay.heights[shape] as number);
  const toX = place.x + halfWidth;
  const toY = place.y + halfHeight;
  const kinds = lay.widths.length;
  const row = piece * count;
  const { level } = charts;
  const { per } = around;
  let sum = 0;
  const near = around.find(
    Math.floor((toX - halfWidth) * per) | 0,
    Math.floor((toX + halfWidth) * per) | 0,
    Math.floor((toY - halfHeight) * per) | 0,
    Math.floor((toY + halfHeight) * per) | 0,
  );
  for (let index = 0; index < near; index += 1) {
    const other = around.found[index] as number;
    const at = other * BOX;
    const dx = toX - (boxes[at] as number);
    if (Math.abs(dx) >= halfWidth + (boxes[at + 2] as number)) continue;
    const dy = toY - (boxes[at + 1] as number);
    if (Math.abs(dy) >= halfHeight + (boxes[at + 3] as number) || other === piece) continue;
    const levels = lookUp(charts, ((shapes[other] as number) * kinds + shape) * VIEW, dx, dy) - NEARLY;
    if (levels <= 0) continue;
    sum += (levels * level + floor) * (weights[row + other] as number);
    if (sum >= enough) return false;
  }
  place.weight = sum;
  return sum < enough;
}
