import { lookUp, NEARLY, VIEW } from './chart';
import { BOX, type Lay, PLACE_WORK } from './lay';

/** About what a piece would weigh there; no less than `enough` where it is more. */
export function weighAbout(lay: Lay, piece: number, shape: number, x: number, y: number, enough: number): number {
  lay.steps += 1;
  lay.work += PLACE_WORK;
  const { boxes, shape: shapes, weights, count, charts, floor } = lay;
  const halfWidth = 0.5 * (lay.widths[shape] as number);
  const halfHeight = 0.5 * (lay.heights[shape] as number);
  const toX = x + halfWidth;
  const toY = y + halfHeight;
  const kinds = lay.widths.length;
  const row = piece * count;
  const { level } = charts;
  let sum = 0;
  for (let other = 0, at = 0; other < count; other += 1, at += BOX) {
    const dx = toX - (boxes[at] as number);
    if (Math.abs(dx) >= halfWidth + (boxes[at + 2] as number)) continue;
    const dy = toY - (boxes[at + 1] as number);
    if (Math.abs(dy) >= halfHeight + (boxes[at + 3] as number) || other === piece) continue;
    const levels = lookUp(charts, ((shapes[other] as number) * kinds + shape) * VIEW, dx, dy) - NEARLY;
    if (levels <= 0) continue;
    sum += (levels * level + floor) * (weights[row + other] as number);
    if (sum >= enough) return sum;
  }
  return sum;
}
