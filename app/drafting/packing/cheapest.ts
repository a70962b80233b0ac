// The cheapest place for one piece while all others lie still: many places looked at roughly, the best few followed
// out of their overlaps.

import { follow } from './follow';
import type { Field } from './job';
import type { Lay } from './lay';
import { type Rated, weigh } from './weigh';
import { weighAbout } from './weigh-about';

/** Places looked at anywhere, and near where the piece lies; how many of them are followed. */
const ANYWHERE = 10;
const NEAR = 5;
const FOLLOWED = 2;
/** Near is within this share of the piece's size. */
const NEAR_SHARE = 0.25;

/** The cheapest places so far, the first `kept` of them in order, and one to look at another in. */
const places: Rated[] = Array.from({ length: FOLLOWED + 1 }, () => ({ shape: 0, x: 0, y: 0, weight: 0 }));
let kept = 0;

/** `rooms`: where the piece may lie, for each field and each of its turns. The place is good until the next is asked for. */
export function cheapest(
  lay: Lay,
  index: number,
  turns: readonly number[],
  fields: readonly Field[],
  rooms: readonly (readonly Field[])[],
  random: () => number,
): Rated {
  const [shape, x, y] = [lay.shape[index] as number, lay.x[index] as number, lay.y[index] as number];
  kept = 0;
  const first = next(shape, x, y);
  weigh(lay, index, first);
  kept = 1;
  for (let n = 0; n < ANYWHERE; n += 1) {
    const turn = Math.floor(random() * turns.length);
    const room = rooms[Math.floor(random() * rooms.length)]?.[turn] as Field;
    const toX = room.left + random() * (room.right - room.left);
    const toY = room.top + random() * (room.bottom - room.top);
    if (room.right < room.left || room.bottom < room.top) continue;
    if (look(lay, index, next(turns[turn] as number, toX, toY))) return places[0] as Rated;
  }
  const room = rooms[fieldAt(fields, x)]?.[Math.max(0, turns.indexOf(shape))] as Field;
  const spreadX = ((lay.right[index] as number) - x) * NEAR_SHARE;
  const spreadY = ((lay.bottom[index] as number) - y) * NEAR_SHARE;
  for (let n = 0; n < NEAR; n += 1) {
    const toX = Math.max(room.left, Math.min(room.right, x + (random() * 2 - 1) * spreadX));
    const toY = Math.max(room.top, Math.min(room.bottom, y + (random() * 2 - 1) * spreadY));
    if (look(lay, index, next(shape, toX, toY))) return places[0] as Rated;
  }
  for (let at = 0; at < kept; at += 1) {
    const place = places[at] as Rated;
    const turn = Math.max(0, turns.indexOf(place.shape));
    follow(lay, index, place, rooms[fieldAt(fields, place.x)]?.[turn] as Field);
    if (place.weight === 0) return place;
  }
  let best = places[0] as Rated;
  for (let at = 1; at < kept; at += 1) if ((places[at] as Rated).weight < best.weight) best = places[at] as Rated;
  return best;
}

/** A place to look at, behind those that are kept: cheap is what costs less than the last of them, once there are enough. */
function next(shape: number, x: number, y: number): Rated {
  const place = places[kept] as Rated;
  place.shape = shape;
  place.x = x;
  place.y = y;
  place.weight = kept < FOLLOWED ? Infinity : (places[kept - 1] as Rated).weight;
  return place;
}

/** Keeps the next place among the cheapest as far as the charts tell, in order, where it is one; true where it costs nothing. */
function look(lay: Lay, piece: number, place: Rated): boolean {
  if (!weighAbout(lay, piece, place)) return false;
  const { weight } = place;
  let at = kept;
  for (; at > 0 && (places[at - 1] as Rated).weight > weight; at -= 1) places[at] = places[at - 1] as Rated;
  places[at] = place;
  if (kept < FOLLOWED) kept += 1;
  if (weight > 0) return false;
  place.weight = Number.MIN_VALUE;
  const isFree = weigh(lay, piece, place);
  place.weight = 0;
  return isFree;
}

/** Fields lie side by side: the one a place belongs to. */
function fieldAt(fields: readonly Field[], x: number): number {
  for (let at = 0; at < fields.length; at += 1) if (x < (fields[at] as Field).right) return at;
  return fields.length - 1;
}
