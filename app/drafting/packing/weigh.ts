import type { Lay } from './lay';
import { depthIn, nearestPlane } from './sums';

/** What a piece would weigh there: its overlaps' depths times their weights; no less than `enough` where it is more. Notes the ways out. */
export function weigh(lay: Lay, piece: number, shape: number, x: number, y: number, enough: number): number {
  lay.steps += 1;
  const { x: lefts, y: tops, right: rights, bottom: bottoms, shape: shapes, weights, count, stock } = lay;
  const { apart } = stock;
  const right = x + (lay.widths[shape] as number) + apart;
  const bottom = y + (lay.heights[shape] as number) + apart;
  let sum = 0;
  lay.heaviest = lay.second = 0;
  for (let other = 0; other < count; other += 1) {
    const left = lefts[other] as number;
    if (right <= left || x >= (rights[other] as number) + apart) continue;
    const top = tops[other] as number;
    if (bottom <= top || y >= (bottoms[other] as number) + apart || other === piece) continue;
    const sums = stock.sums(shapes[other] as number, shape);
    const each = weights[piece * count + other] as number;
    const depth = depthIn(sums, x - left, y - top, (enough - sum) / each);
    if (depth <= 0) continue;
    const weight = (depth + lay.floor) * each;
    sum += weight;
    if (sum >= enough) return sum;
    if (weight > lay.second) note(lay, weight, depth, sums[nearestPlane] as number, sums[nearestPlane + 1] as number);
  }
  return sum;
}

function note(lay: Lay, weight: number, depth: number, nx: number, ny: number): void {
  const isHeaviest = weight > lay.heaviest;
  if (isHeaviest) {
    lay.second = lay.heaviest;
    lay.secondWay.set(lay.heaviestWay);
    lay.heaviest = weight;
  } else lay.second = weight;
  const way = isHeaviest ? lay.heaviestWay : lay.secondWay;
  way[0] = nx;
  way[1] = ny;
  way[2] = depth;
}
