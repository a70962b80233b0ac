// Exact moves along an axis: where on a line through a piece's place it overlaps nothing.

import { BOX, type Lay } from './lay';
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
  { at, least: from, most, level }: Along,
  out: Blocked,
): void {
  out.count = 0;
  lay.work += lay.count;
  const { apart } = lay.stock;
  const half = 0.5 * ((level ? lay.heights : lay.widths)[shape] as number);
  const halfAlong = 0.5 * ((level ? lay.widths : lay.heights)[shape] as number);
  const { boxes } = lay;
  const across = level ? 1 : 0;
  for (let other = 0, box = 0; other < lay.count; other += 1, box += BOX) {
    const off = at + half - (boxes[box + across] as number);
    if (Math.abs(off) >= half + (boxes[box + across + 2] as number) + apart || other === piece) continue;
    const origin = (boxes[box + 1 - across] as number) - halfAlong;
    const reach = halfAlong + (boxes[box + 3 - across] as number) + apart;
    if (origin - reach > most || origin + reach <= from) continue;
    const sums = lay.stock.sums(lay.shape[other] as number, shape);
    lay.work += sums.length;
    addBlocked(sums, off, level, origin, from, most, out);
  }
}

function addBlocked(
  sums: Sums,
  across: number,
  level: boolean,
  origin: number,
  least: number,
  most: number,
  out: Blocked,
): void {
  const low = level ? 1 : 0;
  const along = level ? 0 : 1;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    let from = (sums[at + along] as number) + origin;
    let to = (sums[at + along + 2] as number) + origin;
    if (across > (sums[at + low] as number) && across < (sums[at + low + 2] as number) && from <= most && to > least) {
      for (let plane = at + HEAD; plane < end && from < to; plane += PLANE) {
        const by = sums[plane + along] as number;
        const left = (sums[plane + 2] as number) - (sums[plane + low] as number) * across;
        if (by > 0) to = Math.min(to, left / by + origin);
        else if (by < 0) from = Math.max(from, left / by + origin);
        else if (left <= 0) to = -Infinity;
      }
      if (from < to && 2 * out.count + 2 <= out.ends.length) {
        out.ends[2 * out.count] = from;
        out.ends[2 * out.count + 1] = to;
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
