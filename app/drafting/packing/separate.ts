// Guided separation: pieces that overlap move, one after another, to their cheapest places, until none overlaps. What
// stays in each other's way weighs more and more; what does not, less again (guided local search on overlaps, after Egeblad,
// Nielsen and Odgaard, European Journal of Operational Research 183, 2007; from memory).

import { cheapest } from './cheapest';
import { Crossings } from './crossings';
import { type Field, type Job, type Packed, roomFor } from './job';
import type { Lay } from './lay';
import { type Rated, weigh } from './weigh';

/** A round is of use where all overlaps together come under this share of the least before. */
const OF_USE = 0.98;

/**
 * Separates the pieces until `patience` rounds in a row were of no use. The lay is left as it was when they overlapped least, and
 * that least, the depths of all overlaps together, is returned: 0 where they came apart. Yields after each round, so that whoever asked may stop.
 */
export function* separate(
  lay: Lay,
  job: Job,
  fields: readonly Field[],
  { random, patience }: { readonly random: () => number; readonly patience: number },
): Generator<void, number, void> {
  const crossings = new Crossings(lay);
  const rooms = job.pieces.map((piece) =>
    fields.map((field) => piece.turns.map((turn) => roomFor(job, piece, turn, field))),
  );
  const laid = lay.noted();
  let least = Infinity;
  for (let waited = 0; ; ) {
    const { total, overlapping } = crossings.reweigh();
    lay.steps += 1;
    if (total === 0) return 0;
    waited = total < least * OF_USE ? 0 : waited + 1;
    if (total < least) lay.noted(laid);
    least = Math.min(least, total);
    if (waited > patience) break;
    shuffle(overlapping, random);
    for (const index of overlapping) {
      if (isFree(lay, index)) continue;
      const piece = job.pieces[index] as Packed;
      const place = cheapest(lay, index, piece.turns, fields, rooms[index] ?? [], random);
      lay.put(index, place.shape, place.x, place.y);
      crossings.refresh(index);
    }
    yield;
  }
  lay.restore(laid);
  return least;
}

/** Whether a piece overlaps nothing any more. */
function isFree(lay: Lay, index: number): boolean {
  here.shape = lay.shape[index] as number;
  here.x = lay.x[index] as number;
  here.y = lay.y[index] as number;
  here.weight = Number.MIN_VALUE;
  return weigh(lay, index, here);
}

const here: Rated = { shape: 0, x: 0, y: 0, weight: 0 };

function shuffle(list: number[], random: () => number): void {
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const kept = list[last] as number;
    list[last] = list[other] as number;
    list[other] = kept;
  }
}
