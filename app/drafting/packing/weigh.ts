import { CLEAR, lookUp, NEARLY, VIEW } from './chart';
import { BOX, type Lay, PLACE_WORK } from './lay';
import { depthIn, nearestPlane } from './near';

/** A place of a piece and what it weighs, or what it must come under. Changed in place: millions are looked at. */
export type Rated = { shape: number; x: number; y: number; weight: number };

/** Whether the piece weighs less there than `place.weight`, which then says how much: its overlaps' depths times their weights. Notes the ways out. */
export function weigh(lay: Lay, piece: number, place: Rated): boolean {
  lay.steps += 1;
  lay.work += PLACE_WORK;
  const { around, boxes, shape: shapes, weights, count, charts, floor, touch, stock } = lay;
  const { shape, weight: enough } = place;
  const halfWidth = 0.5 * (lay.widths[shape] as number);
  const halfHeight = 0.5 * (lay.heights[shape] as number);
  const toX = place.x + halfWidth;
  const toY = place.y + halfHeight;
  const wide = halfWidth + stock.apart;
  const high = halfHeight + stock.apart;
  const kinds = lay.widths.length;
  const row = piece * count;
  const { per } = around;
  let sum = 0;
  lay.heaviest = lay.second = 0;
  const near = around.find(
    Math.floor((toX - wide) * per) | 0,
    Math.floor((toX + wide) * per) | 0,
    Math.floor((toY - high) * per) | 0,
    Math.floor((toY + high) * per) | 0,
  );
  for (let index = 0; index < near; index += 1) {
    const other = around.found[index] as number;
    const at = other * BOX;
    const dx = toX - (boxes[at] as number);
    if (Math.abs(dx) >= wide + (boxes[at + 2] as number)) continue;
    const dy = toY - (boxes[at + 1] as number);
    if (Math.abs(dy) >= high + (boxes[at + 3] as number) || other === piece) continue;
    const view = ((shapes[other] as number) * kinds + shape) * VIEW;
    const about = lookUp(charts, view, dx, dy);
    if (about === CLEAR) continue;
    const each = weights[row + other] as number;
    const atLeast = (about - NEARLY) * charts.level - charts.off;
    if (atLeast > 0 && sum + (atLeast + floor) * each >= enough) return false;
    const sums = stock.sums(shapes[other] as number, shape);
    lay.work += sums.length;
    const depth = depthIn(lay, view, sums, dx, dy, (enough - sum) / each);
    if (depth <= touch) continue;
    const weight = (depth + floor) * each;
    sum += weight;
    if (sum >= enough) return false;
    if (weight > lay.second) note(lay, weight, depth, sums[nearestPlane] as number, sums[nearestPlane + 1] as number);
  }
  place.weight = sum;
  return sum < enough;
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
