// Exact moves along an axis: where on a line through a piece's place it overlaps nothing.

import type { Lay } from './lay';
import type { Shape } from './shape';
import { HEAD, PLANE, type Sums } from './sums';

/** Stretches of a line, from and to one after the other, in which a piece would overlap another. */
export type Blocked = { readonly ends: Float64Array; count: number };

export function blockedList(): Blocked {
  return { ends: new Float64Array(1 << 14), count: 0 };
}

/** A line across at `at`, and the part of it that is looked at. */
export type Along = {
  readonly at: number;
  readonly least: number;
  readonly most: number;
  readonly level: boolean;
};

/** Every stretch of the level (or upright) line through the place, from `least` to `most`, in which the piece overlaps another. */
export function blockedAlong(
  lay: Lay,
  piece: number,
  shape: number,
  { at, least, most, level }: Along,
  out: Blocked,
): void {
  out.count = 0;
  const { apart } = lay.stock;
  const { width, height } = lay.stock.shapes[shape] as Shape;
  const [size, length] = level ? [height, width] : [width, height];
  const from = level ? lay.y : lay.x;
  const to = level ? lay.bottom : lay.right;
  const along = level ? lay.x : lay.y;
  const alongTo = level ? lay.right : lay.bottom;
  for (let other = 0; other < lay.count; other += 1) {
    if (other === piece || at >= (to[other] as number) + apart || at + size + apart <= (from[other] as number))
      continue;
    if ((along[other] as number) > most + length + apart || (alongTo[other] as number) + apart <= least) continue;
    const sums = lay.stock.sums(lay.shape[other] as number, shape);
    addBlocked(sums, at - (from[other] as number), level, along[other] as number, out);
  }
}

function addBlocked(sums: Sums, across: number, level: boolean, origin: number, out: Blocked): void {
  const low = level ? 1 : 0;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    if (across > (sums[at + low] as number) && across < (sums[at + low + 2] as number)) {
      let from = -Infinity;
      let to = Infinity;
      for (let plane = at + HEAD; plane < end; plane += PLANE) {
        const along = sums[plane + (level ? 0 : 1)] as number;
        const left = (sums[plane + 2] as number) - (sums[plane + (level ? 1 : 0)] as number) * across;
        if (along > 0) to = Math.min(to, left / along);
        else if (along < 0) from = Math.max(from, left / along);
        else if (left <= 0) to = -Infinity;
      }
      if (from < to && 2 * out.count + 2 <= out.ends.length) {
        out.ends[2 * out.count] = from + origin;
        out.ends[2 * out.count + 1] = to + origin;
        out.count += 1;
      }
    }
    at = end;
  }
}

/** The first free place at or after `start`; beyond `most` it may be any. */
export function firstFree({ ends, count }: Blocked, start: number, most: number): number {
  let at = start;
  for (let moved = true; moved && at <= most; ) {
    moved = false;
    for (let index = 0; index < count; index += 1) {
      if (at >= (ends[2 * index] as number) && at < (ends[2 * index + 1] as number)) {
        at = ends[2 * index + 1] as number;
        moved = true;
      }
    }
  }
  return at;
}

/** How far back from `start` one may go, no further than `least`, without passing a blocked stretch. */
export function slideBack({ ends, count }: Blocked, start: number, least: number): number {
  let at = least;
  for (let index = 0; index < count; index += 1) {
    const [from, to] = [ends[2 * index] as number, ends[2 * index + 1] as number];
    if (from < start && to > at) at = Math.min(to, start);
  }
  return at;
}
