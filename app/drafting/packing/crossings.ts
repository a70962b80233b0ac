// Which pieces overlap, how deep, and what that weighs from round to round.

import type { Lay } from './lay';

/** By what share an overlap's weight grows each round, the least and the deepest, and what is left of it where there is none. */
const GROWS = { least: 0.1, deepest: 0.5 } as const;
const FADES = 0.95;
/** Found to be good for so many pieces; the fewer there are the faster it grows, by the root of that, up to so much. */
const USUAL = { pieces: 100, faster: 2 } as const;

/** Kept up to date piece by piece: only pairs that overlap, or weigh more than at least, are looked at each round. */
export class Crossings {
  private readonly depths: Float64Array;
  private readonly isListed: Uint8Array;
  private readonly listed: number[] = [];
  private readonly faster: number;

  constructor(private readonly lay: Lay) {
    lay.weights.set(lay.leastWeights);
    this.depths = new Float64Array(lay.count ** 2);
    this.faster = Math.max(1, Math.min(USUAL.faster, Math.sqrt(USUAL.pieces / lay.movable)));
    this.isListed = new Uint8Array(lay.count ** 2);
    for (let piece = 0; piece < lay.movable; piece += 1) this.refresh(piece);
  }

  /** Call after a piece has moved. */
  refresh(piece: number): void {
    const { lay, depths, isListed } = this;
    for (let other = 0; other < lay.count; other += 1) depths[this.pair(piece, other)] = 0;
    const near = lay.near(piece);
    for (let index = 0; index < near; index += 1) {
      const other = lay.around.found[index] as number;
      if (other === piece) continue;
      const at = this.pair(piece, other);
      const depth = lay.depth(piece, other);
      depths[at] = depth;
      if (depth === 0 || isListed[at] === 1) continue;
      isListed[at] = 1;
      this.listed.push(at);
    }
  }

  private pair(one: number, other: number): number {
    const { count } = this.lay;
    return one < other ? one * count + other : other * count + one;
  }

  /** The sum of all overlaps, and the movable pieces that overlap; what stays overlapped weighs more from now on. */
  reweigh(): { readonly total: number; readonly overlapping: number[] } {
    const { depths, listed, isListed } = this;
    const { count, movable } = this.lay;
    const overlapping = new Set<number>();
    let [total, deepest] = [0, 0];
    for (const at of listed) {
      const depth = depths[at] as number;
      if (depth <= 0) continue;
      total += depth;
      deepest = Math.max(deepest, depth);
      overlapping.add(Math.floor(at / count));
      if (at % count < movable) overlapping.add(at % count);
    }
    const grown = GROWS.deepest - GROWS.least;
    let kept = 0;
    for (const at of listed) {
      const depth = depths[at] as number;
      const by = depth > 0 ? 1 + this.faster * (GROWS.least + (grown * depth) / deepest) : FADES;
      if (this.scale(at, by) || depth > 0) listed[kept++] = at;
      else isListed[at] = 0;
    }
    listed.length = kept;
    return { total, overlapping: [...overlapping] };
  }

  /** Whether the pair still weighs more than at least. */
  private scale(at: number, by: number): boolean {
    const { weights, leastWeights, count } = this.lay;
    const least = leastWeights[at] as number;
    const weight = Math.max(least, (weights[at] as number) * by);
    weights[at] = weight;
    weights[(at % count) * count + Math.floor(at / count)] = weight;
    return weight > least;
  }
}
