// The cheapest place for one piece while all others lie still: many places looked at roughly, the best few followed
// out of their overlaps.

import { follow, type Rated } from './follow';
import type { Field } from './job';
import type { Lay } from './lay';
import { weigh } from './weigh';
import { weighAbout } from './weigh-about';

/** Places looked at anywhere, and near where the piece lies; how many of them are followed. */
const ANYWHERE = 15;
const NEAR = 5;
const FOLLOWED = 2;
/** Near is within this share of the piece's size. */
const NEAR_SHARE = 0.25;

/** `rooms`: where the piece may lie, for each field and each of its turns. */
export function cheapest(
  lay: Lay,
  index: number,
  turns: readonly number[],
  fields: readonly Field[],
  rooms: readonly (readonly Field[])[],
  random: () => number,
): Rated {
  const [shape, x, y] = [lay.shape[index] as number, lay.x[index] as number, lay.y[index] as number];
  const kept: Rated[] = [{ shape, x, y, weight: weigh(lay, index, shape, x, y, Infinity) }];
  for (let n = 0; n < ANYWHERE; n += 1) {
    const turn = Math.floor(random() * turns.length);
    const room = rooms[Math.floor(random() * rooms.length)]?.[turn] as Field;
    const toX = room.left + random() * (room.right - room.left);
    const toY = room.top + random() * (room.bottom - room.top);
    if (room.right < room.left || room.bottom < room.top) continue;
    if (look(lay, index, kept, turns[turn] as number, toX, toY)) return kept[0] as Rated;
  }
  const room = rooms[fieldAt(fields, x)]?.[Math.max(0, turns.indexOf(shape))] as Field;
  const spreadX = ((lay.right[index] as number) - x) * NEAR_SHARE;
  const spreadY = ((lay.bottom[index] as number) - y) * NEAR_SHARE;
  for (let n = 0; n < NEAR; n += 1) {
    const toX = Math.max(room.left, Math.min(room.right, x + (random() * 2 - 1) * spreadX));
    const toY = Math.max(room.top, Math.min(room.bottom, y + (random() * 2 - 1) * spreadY));
    if (look(lay, index, kept, shape, toX, toY)) return kept[0] as Rated;
  }
  for (const place of kept) {
    const turn = Math.max(0, turns.indexOf(place.shape));
    follow(lay, index, place, rooms[fieldAt(fields, place.x)]?.[turn] as Field);
    if (place.weight === 0) return place;
  }
  return kept.reduce((best, place) => (place.weight < best.weight ? place : best));
}

/** Keeps the place among the cheapest as far as the charts tell, in order, where it is one; true where it costs nothing. */
function look(lay: Lay, piece: number, kept: Rated[], shape: number, x: number, y: number): boolean {
  const enough = kept.length < FOLLOWED ? Infinity : (kept[kept.length - 1] as Rated).weight;
  const weight = weighAbout(lay, piece, shape, x, y, enough);
  if (weight >= enough) return false;
  let at = kept.length;
  while (at > 0 && (kept[at - 1] as Rated).weight > weight) at -= 1;
  kept.splice(at, 0, { shape, x, y, weight });
  if (kept.length > FOLLOWED) kept.length = FOLLOWED;
  return weight === 0 && weigh(lay, piece, shape, x, y, Number.MIN_VALUE) === 0;
}

/** Fields lie side by side: the one a place belongs to. */
function fieldAt(fields: readonly Field[], x: number): number {
  for (let at = 0; at < fields.length; at += 1) if (x < (fields[at] as Field).right) return at;
  return fields.length - 1;
}
