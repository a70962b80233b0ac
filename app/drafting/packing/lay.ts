// A lay under work: where every piece lies now, and how much an overlap weighs. Mutable and flat, for speed; nothing
// outside this folder sees it.

import { Around } from './around';
import { type Charts, CLEAR, lookUp, VIEW } from './chart';
import type { Job, Place } from './job';
import { leastWeights } from './least-weights';
import { depthIn, type Lists } from './near';
import type { Stock } from './stock';

/** Every overlap counts as this share of a usual piece's size deeper than it is: a hair of it is worth getting rid of. */
const FLOOR_SHARE = 0.005;

/** How wide a lane is in which pieces are looked for, as a share of a usual piece's size. */
const LANE_SHARE = 0.8;

/** Pieces touch where an overlap is no deeper than this share of a usual piece's size: it is rounding. */
const TOUCH_SHARE = 1e-9;

/** Where a piece waits that is not laid yet: far off any field. */
const ASIDE = -1e9;

/** About how many numbers are read for a place before any sums are. */
export const PLACE_WORK = 60;

/** How many numbers a piece's box takes. */
export const BOX = 4;

/** Where pieces lay at some time. */
export type Laid = { readonly shape: Int32Array; readonly x: Float64Array; readonly y: Float64Array };

export class Lay {
  readonly stock: Stock;
  /** Pieces that move; those that are fixed follow them. */
  readonly movable: number;
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly right: Float64Array;
  readonly bottom: Float64Array;
  /** The middle of each piece's box and half its size, `BOX` numbers each. */
  readonly boxes: Float64Array;
  readonly shape: Int32Array;
  readonly around: Around;
  /** Of every shape of the stock, and the charts of every two. */
  readonly widths: Float64Array;
  readonly heights: Float64Array;
  readonly charts: Charts;
  readonly lists: Lists;
  /** What an overlap of every two pieces weighs now, and at least. */
  readonly weights: Float64Array;
  readonly leastWeights: Float64Array;
  /** What every overlap counts as deeper than it is. */
  readonly floor: number;
  /** How deep an overlap may be and is none yet. */
  readonly touch: number;
  /** The ways out of the two heaviest overlaps last weighed: normal x, normal y, depth; `second` is 0 where there is one. */
  readonly heaviestWay = new Float64Array(3);
  readonly secondWay = new Float64Array(3);
  heaviest = 0;
  second = 0;
  /** How many places were weighed so far. */
  steps = 0;
  /** About how long that took, as numbers read. */
  work = 0;

  constructor(job: Job) {
    const { stock, pieces, fixed = [] } = job;
    const count = pieces.length + fixed.length;
    this.stock = stock;
    this.charts = stock.charts();
    this.lists = stock.lists();
    this.movable = pieces.length;
    this.count = count;
    this.widths = Float64Array.from(stock.shapes, (shape) => shape.width);
    this.heights = Float64Array.from(stock.shapes, (shape) => shape.height);
    this.x = new Float64Array(count);
    this.y = new Float64Array(count);
    this.right = new Float64Array(count);
    this.bottom = new Float64Array(count);
    this.boxes = new Float64Array(count * BOX);
    this.shape = new Int32Array(count);
    this.leastWeights = leastWeights(job);
    this.weights = this.leastWeights.slice();
    const area = pieces.reduce((sum, { turns }) => sum + (stock.shapes[turns[0] ?? 0]?.area ?? 0), 0);
    const usual = Math.sqrt(area / Math.max(1, pieces.length));
    this.floor = FLOOR_SHARE * usual;
    this.touch = TOUCH_SHARE * usual;
    this.around = new Around(count, LANE_SHARE * usual);
    pieces.forEach(({ turns }, index) => {
      this.put(index, turns[0] ?? 0, ASIDE, ASIDE);
    });
    fixed.forEach(({ shape, x, y }, index) => {
      this.put(pieces.length + index, shape, x, y);
    });
  }

  put(piece: number, shape: number, x: number, y: number): void {
    this.mark(piece, false);
    this.shape[piece] = shape;
    this.x[piece] = x;
    this.y[piece] = y;
    const [width, height] = [this.widths[shape] as number, this.heights[shape] as number];
    this.right[piece] = x + width;
    this.bottom[piece] = y + height;
    this.boxes[piece * BOX] = x + width / 2;
    this.boxes[piece * BOX + 1] = y + height / 2;
    this.boxes[piece * BOX + 2] = width / 2;
    this.boxes[piece * BOX + 3] = height / 2;
    this.mark(piece, true);
  }

  private mark(piece: number, isThere: boolean): void {
    const { x, y, right, bottom } = this;
    const [left, top] = [x[piece] as number, y[piece] as number];
    this.around.mark(piece, left, top, right[piece] as number, bottom[piece] as number, isThere);
  }

  putAside(piece: number): void {
    this.put(piece, this.shape[piece] as number, ASIDE, ASIDE);
  }

  /** How the pieces lie now, to come back to; in `into`, where there is one. */
  noted(into?: Laid): Laid {
    const { shape, x, y } = this;
    if (!into) return { shape: shape.slice(), x: x.slice(), y: y.slice() };
    into.shape.set(shape);
    into.x.set(x);
    into.y.set(y);
    return into;
  }

  restore({ shape, x, y }: Laid): void {
    for (let piece = 0; piece < this.movable; piece += 1) {
      this.put(piece, shape[piece] as number, x[piece] as number, y[piece] as number);
    }
  }

  places(): readonly Place[] {
    return Array.from({ length: this.movable }, (_, index) => ({
      shape: this.shape[index] as number,
      x: this.x[index] as number,
      y: this.y[index] as number,
    }));
  }

  /** How many pieces may lie in the way of one; `around.found` says which, perhaps itself too. */
  near(piece: number): number {
    const { around, stock } = this;
    const { apart } = stock;
    return around.find(
      around.lane((this.x[piece] as number) - apart),
      around.lane((this.right[piece] as number) + apart),
      around.lane((this.y[piece] as number) - apart),
      around.lane((this.bottom[piece] as number) + apart),
    );
  }

  /** How deep two pieces overlap, 0 where they do not. */
  depth(one: number, other: number): number {
    const { boxes, shape, charts, stock } = this;
    const [at, to] = [one * BOX, other * BOX];
    const dx = (boxes[at] as number) - (boxes[to] as number);
    if (Math.abs(dx) >= (boxes[at + 2] as number) + (boxes[to + 2] as number) + stock.apart) return 0;
    const dy = (boxes[at + 1] as number) - (boxes[to + 1] as number);
    if (Math.abs(dy) >= (boxes[at + 3] as number) + (boxes[to + 3] as number) + stock.apart) return 0;
    const view = ((shape[other] as number) * this.widths.length + (shape[one] as number)) * VIEW;
    if (lookUp(charts, view, dx, dy) === CLEAR) return 0;
    const sums = stock.sums(shape[other] as number, shape[one] as number);
    const depth = depthIn(this, view, sums, dx, dy);
    return depth > this.touch ? depth : 0;
  }
}
