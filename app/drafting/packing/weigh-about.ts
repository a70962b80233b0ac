import { depthAbout } from './chart';
import type { Lay } from './lay';

/** About what a piece would weigh there; no less than `enough` where it is more. */
export function weighAbout(lay: Lay, piece: number, shape: number, x: number, y: number, enough: number): number {
  lay.steps += 1;
  const { x: lefts, y: tops, right: rights, bottom: bottoms, shape: shapes, weights, count, charts, floor } = lay;
  const right = x + (lay.widths[shape] as number);
  const bottom = y + (lay.heights[shape] as number);
  const kinds = lay.widths.length;
  let sum = 0;
  for (let other = 0; other < count; other += 1) {
    const left = lefts[other] as number;
    if (right <= left || x >= (rights[other] as number)) continue;
    const top = tops[other] as number;
    if (bottom <= top || y >= (bottoms[other] as number) || other === piece) continue;
    const at = (shapes[other] as number) * kinds + shape;
    const depth = depthAbout(charts[at] ?? lay.stock.chart(shapes[other] as number, shape), x - left, y - top);
    if (depth <= 0) continue;
    sum += (depth + floor) * (weights[piece * count + other] as number);
    if (sum >= enough) return sum;
  }
  return sum;
}
