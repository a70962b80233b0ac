import type { Field } from './job';
import type { Lay } from './lay';
import { type Rated, weigh } from './weigh';

/** More ways out than that in a row were seldom of use. */
const MOST_ROUNDS = 20;
/** A way out goes a hair further, as a share of the depth, so that rounding does not leave the piece inside. */
const BEYOND = 1.0001;
/** Two ways out that cross at less than this sine lead too far when taken at once. */
const CROSSING = 0.2;

/** Takes the piece out of its heaviest overlaps, two at once where that can be, while it gets cheaper; stays in `room`. */
export function follow(lay: Lay, piece: number, place: Rated, room: Field): void {
  const { heaviestWay, secondWay } = lay;
  place.weight = Infinity;
  weigh(lay, piece, place);
  for (let round = 0; round < MOST_ROUNDS && place.weight > 0; round += 1) {
    const ax = heaviestWay[0] as number;
    const ay = heaviestWay[1] as number;
    const a = BEYOND * (heaviestWay[2] as number);
    const bx = secondWay[0] as number;
    const by = secondWay[1] as number;
    const b = BEYOND * (secondWay[2] as number);
    const across = ax * by - ay * bx;
    const both = lay.second > 0 && Math.abs(across) > CROSSING;
    if (both && step(lay, piece, place, room, (a * by - b * ay) / across, (b * ax - a * bx) / across)) continue;
    if (!step(lay, piece, place, room, ax * a, ay * a)) return;
  }
}

/** Moves the place by that much, within the room, where it gets cheaper. */
function step(lay: Lay, piece: number, place: Rated, room: Field, dx: number, dy: number): boolean {
  tried.shape = place.shape;
  tried.x = Math.max(room.left, Math.min(room.right, place.x + dx));
  tried.y = Math.max(room.top, Math.min(room.bottom, place.y + dy));
  tried.weight = place.weight;
  if (!weigh(lay, piece, tried)) return false;
  place.x = tried.x;
  place.y = tried.y;
  place.weight = tried.weight;
  return true;
}

const tried: Rated = { shape: 0, x: 0, y: 0, weight: 0 };
