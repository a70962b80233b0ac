// Which pieces overlap, how deep, and what that weighs from round to round.

import type { Lay } from './lay';

/** What an overlap's weight is multiplied by each round: the least, the deepest, and where there is none. */
const HEAVIER = { least: 1.1, deepest: 1.5, none: 0.95 } as const;

/** Kept up to date piece by piece: only pairs that overlap, or weigh more than at least, are looked at each round. */
export class Crossings {
  private readonly depths: Float64Array;
  private readonly isListed: Uint8Array;
  private readonly listed: number[] = [];

  constructor(private readonly lay: Lay) {
    lay.weights.set(lay.leastWeights);
    this.depths = new Float64Array(lay.count ** 2);
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
    let kept = 0;
    for (const at of listed) {
      const depth = depths[at] as number;
      const by = depth > 0 ? HEAVIER.least + ((HEAVIER.deepest - HEAVIER.least) * depth) / deepest : HEAVIER.none;
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
