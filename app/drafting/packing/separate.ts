// Guided separation: pieces that overlap move, one after another, to their cheapest places, until none overlaps. What
// stays in each other's way weighs more and more; what does not, less again.

import { cheapest } from './cheapest';
import { type Field, type Job, type Packed, roomFor } from './job';
import type { Lay } from './lay';

/** What an overlap's weight is multiplied by each round: the least, the deepest, and where there is none. */
const HEAVIER = { least: 1.1, deepest: 1.5, none: 0.95 } as const;

/** A round is of use where all overlaps together come under this share of the least before. */
const OF_USE = 0.98;

/**
 * Whether the pieces could be separated before `patience` rounds in a row were of no use; the lay is left as it then is.
 * Yields after each round, so that whoever asked may stop.
 */
export function* separate(
  lay: Lay,
  job: Job,
  fields: readonly Field[],
  { random, patience }: { readonly random: () => number; readonly patience: number },
): Generator<void, boolean, void> {
  lay.weights.set(lay.leastWeights);
  const rooms = job.pieces.map((piece) =>
    fields.map((field) => piece.turns.map((turn) => roomFor(job, piece, turn, field))),
  );
  let least = Infinity;
  for (let waited = 0; ; ) {
    const { total, overlapping } = reweigh(lay);
    if (total === 0) return true;
    waited = total < least * OF_USE ? 0 : waited + 1;
    if (waited > patience) return false;
    least = Math.min(least, total);
    shuffle(overlapping, random);
    for (const index of overlapping) {
      const [x, y] = [lay.x[index] as number, lay.y[index] as number];
      if (lay.weigh(index, lay.shape[index] as number, x, y, Number.MIN_VALUE) === 0) continue;
      const piece = job.pieces[index] as Packed;
      const place = cheapest(lay, index, piece.turns, fields, rooms[index] ?? [], random);
      lay.put(index, place.shape, place.x, place.y);
    }
    yield;
  }
}

/** The sum of all overlaps and the pieces that overlap; sets the weights anew. */
function reweigh(lay: Lay): { readonly total: number; readonly overlapping: number[] } {
  const { count, movable } = lay;
  lay.steps += 1;
  const found: number[] = [];
  const overlapping = new Set<number>();
  let [total, deepest] = [0, 0];
  for (let one = 0; one < movable; one += 1) {
    for (let other = one + 1; other < count; other += 1) {
      const depth = lay.depth(one, other);
      if (depth > 0) {
        found.push(one, other, depth);
        total += depth;
        deepest = Math.max(deepest, depth);
        overlapping.add(one);
        if (other < movable) overlapping.add(other);
      } else scale(lay, one, other, HEAVIER.none);
    }
  }
  for (let at = 0; at < found.length; at += 3) {
    const [one, other, depth] = [found[at] as number, found[at + 1] as number, found[at + 2] as number];
    scale(lay, one, other, HEAVIER.least + ((HEAVIER.deepest - HEAVIER.least) * depth) / deepest);
  }
  return { total, overlapping: [...overlapping] };
}

function scale({ weights, leastWeights, count }: Lay, one: number, other: number, by: number): void {
  const [at, back] = [one * count + other, other * count + one];
  const [weight, least] = [weights[at] as number, leastWeights[at] as number];
  if (by < 1 && weight <= least) return;
  weights[at] = weights[back] = Math.max(least, weight * by);
}

function shuffle(list: number[], random: () => number): void {
  for (let last = list.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const kept = list[last] as number;
    list[last] = list[other] as number;
    list[other] = kept;
  }
}
