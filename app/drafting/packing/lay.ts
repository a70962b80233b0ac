// A lay under work: where every piece lies now, and how much each overlap weighs. Mutable and flat, for speed; nothing
// outside this folder sees it.

import type { Job, Place } from './job';
import { leastWeights } from './least-weights';
import type { Stock } from './stock';
import { depthIn, nearestPlane, type Sums } from './sums';

/** Every overlap counts as this share of a usual piece's size deeper than it is: a hair of it is worth getting rid of. */
const FLOOR_SHARE = 0.005;

/** Where a piece waits that is not laid yet: far off any field. */
const ASIDE = -1e9;

export class Lay {
  readonly stock: Stock;
  /** Pieces that move; those that are fixed follow them. */
  readonly movable: number;
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly right: Float64Array;
  readonly bottom: Float64Array;
  readonly shape: Int32Array;
  /** What an overlap of every two pieces weighs now, and at least. */
  readonly weights: Float64Array;
  readonly leastWeights: Float64Array;
  /** The ways out of the two heaviest overlaps last weighed: normal x, normal y, depth; `second` is 0 where there is one. */
  readonly heaviestWay = new Float64Array(3);
  readonly secondWay = new Float64Array(3);
  heaviest = 0;
  second = 0;
  /** How many places were weighed so far. */
  steps = 0;
  private readonly widths: Float64Array;
  private readonly heights: Float64Array;
  private readonly known: (Sums | undefined)[];
  private readonly floor: number;
  private readonly apart: number;

  constructor(job: Job) {
    const { stock, pieces, fixed = [] } = job;
    const count = pieces.length + fixed.length;
    this.stock = stock;
    this.known = stock.known;
    this.apart = stock.apart;
    this.movable = pieces.length;
    this.count = count;
    this.widths = Float64Array.from(stock.shapes, (shape) => shape.width);
    this.heights = Float64Array.from(stock.shapes, (shape) => shape.height);
    this.x = new Float64Array(count);
    this.y = new Float64Array(count);
    this.right = new Float64Array(count);
    this.bottom = new Float64Array(count);
    this.shape = new Int32Array(count);
    this.leastWeights = leastWeights(job);
    this.weights = this.leastWeights.slice();
    const area = pieces.reduce((sum, { turns }) => sum + (stock.shapes[turns[0] ?? 0]?.area ?? 0), 0);
    this.floor = FLOOR_SHARE * Math.sqrt(area / Math.max(1, pieces.length));
    pieces.forEach(({ turns }, index) => {
      this.put(index, turns[0] ?? 0, ASIDE, ASIDE);
    });
    fixed.forEach(({ shape, x, y }, index) => {
      this.put(pieces.length + index, shape, x, y);
    });
  }

  put(piece: number, shape: number, x: number, y: number): void {
    this.shape[piece] = shape;
    this.x[piece] = x;
    this.y[piece] = y;
    this.right[piece] = x + (this.widths[shape] as number);
    this.bottom[piece] = y + (this.heights[shape] as number);
  }

  putAside(piece: number): void {
    this.put(piece, this.shape[piece] as number, ASIDE, ASIDE);
  }

  places(): readonly Place[] {
    return Array.from({ length: this.movable }, (_, index) => ({
      shape: this.shape[index] as number,
      x: this.x[index] as number,
      y: this.y[index] as number,
    }));
  }

  /** What a piece would weigh there: its overlaps' depths times their weights; no less than `enough` where it is more. */
  weigh(piece: number, shape: number, x: number, y: number, enough: number): number {
    this.steps += 1;
    const { x: lefts, y: tops, right: rights, bottom: bottoms, shape: shapes, weights, count, known, apart } = this;
    const right = x + (this.widths[shape] as number);
    const bottom = y + (this.heights[shape] as number);
    const kinds = this.widths.length;
    let sum = 0;
    this.heaviest = this.second = 0;
    for (let other = 0; other < count; other += 1) {
      const left = lefts[other] as number;
      const top = tops[other] as number;
      if (right <= left - apart || x >= (rights[other] as number) + apart) continue;
      if (bottom <= top - apart || y >= (bottoms[other] as number) + apart) continue;
      if (other === piece) continue;
      const two = (shapes[other] as number) * kinds + shape;
      const sums = known[two] ?? this.stock.sums(shapes[other] as number, shape);
      const each = weights[piece * count + other] as number;
      const depth = depthIn(sums, x - left, y - top, (enough - sum) / each);
      if (depth <= 0) continue;
      const weight = (depth + this.floor) * each;
      sum += weight;
      if (sum >= enough) return sum;
      if (weight > this.second)
        this.note(weight, depth, sums[nearestPlane] as number, sums[nearestPlane + 1] as number);
    }
    return sum;
  }

  private note(weight: number, depth: number, nx: number, ny: number): void {
    const isHeaviest = weight > this.heaviest;
    if (isHeaviest) {
      this.second = this.heaviest;
      this.secondWay.set(this.heaviestWay);
      this.heaviest = weight;
    } else this.second = weight;
    const way = isHeaviest ? this.heaviestWay : this.secondWay;
    way[0] = nx;
    way[1] = ny;
    way[2] = depth;
  }

  /** How deep two pieces overlap, 0 where they do not. */
  depth(one: number, other: number): number {
    const { x, y, right, bottom, shape, apart } = this;
    if ((x[one] as number) >= (right[other] as number) + apart) return 0;
    if ((right[one] as number) + apart <= (x[other] as number)) return 0;
    if ((y[one] as number) >= (bottom[other] as number) + apart) return 0;
    if ((bottom[one] as number) + apart <= (y[other] as number)) return 0;
    const sums = this.stock.sums(shape[other] as number, shape[one] as number);
    return depthIn(sums, (x[one] as number) - (x[other] as number), (y[one] as number) - (y[other] as number));
  }
}
