import type { Field } from './job';
import type { Lay } from './lay';
import { weigh } from './weigh';

/** A place and what it weighs. */
export type Rated = { shape: number; x: number; y: number; weight: number };

/** More ways out than that in a row were seldom of use. */
const MOST_ROUNDS = 20;
/** A way out goes a hair further, as a share of the depth, so that rounding does not leave the piece inside. */
const BEYOND = 1.0001;
/** Two ways out that cross at less than this sine lead too far when taken at once. */
const CROSSING = 0.2;

/** Takes the piece out of its heaviest overlaps, two at once where that can be, while it gets cheaper; stays in `room`. */
export function follow(lay: Lay, piece: number, place: Rated, room: Field): void {
  const { heaviestWay, secondWay } = lay;
  place.weight = weigh(lay, piece, place.shape, place.x, place.y, Infinity);
  for (let round = 0; round < MOST_ROUNDS && place.weight > 0; round += 1) {
    const [ax, ay, a] = [heaviestWay[0] as number, heaviestWay[1] as number, BEYOND * (heaviestWay[2] as number)];
    const [bx, by, b] = [secondWay[0] as number, secondWay[1] as number, BEYOND * (secondWay[2] as number)];
    const across = ax * by - ay * bx;
    const both = lay.second > 0 && Math.abs(across) > CROSSING;
    if (both && step(lay, piece, place, room, (a * by - b * ay) / across, (b * ax - a * bx) / across)) continue;
    if (!step(lay, piece, place, room, ax * a, ay * a)) return;
  }
}

/** Moves the place by that much, within the room, where it gets cheaper. */
function step(lay: Lay, piece: number, place: Rated, room: Field, dx: number, dy: number): boolean {
  const x = Math.max(room.left, Math.min(room.right, place.x + dx));
  const y = Math.max(room.top, Math.min(room.bottom, place.y + dy));
  const weight = weigh(lay, piece, place.shape, x, y, place.weight);
  if (weight >= place.weight) return false;
  place.x = x;
  place.y = y;
  place.weight = weight;
  return true;
}
