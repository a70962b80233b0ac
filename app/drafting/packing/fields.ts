// Pieces on fields of fixed size (a scrap, pages): whether a place for all of them is found.

import { bottomLeft } from './bottom-left';
import { chance } from './chance';
import { type Field, type Found, type Job, type Packed, type Place, roomFor } from './job';
import { Lay } from './lay';
import { orders } from './orders';
import { separate } from './separate';

/** Rounds without use before a try is given up; each try is more patient, up to the last. */
const PATIENCE = { first: 60, most: 400, more: 1.4 } as const;

/** Where every piece lies, or, as long as none was found, the pieces the best first lay had no room for. */
export type Fitted = { readonly places?: readonly Place[]; readonly left: readonly number[] };

/**
 * Looks for a lay of all pieces on the fields until one is found: stop asking when it takes too long, since a search
 * cannot prove that there is none. Ends at once, without places, where a piece fits no field even alone. Yields between
 * rounds; the same seed gives the same row.
 */
export function* packFields(job: Job, fields: readonly Field[], seed: number): Generator<Found<Fitted>, void, void> {
  const lay = new Lay(job);
  const tooLarge = job.pieces.flatMap((piece, index) => (roomsFor(job, piece, fields).length > 0 ? [] : [index]));
  if (tooLarge.length > 0) return yield { steps: 0, best: { left: tooLarge } };
  let left: readonly number[] | undefined;
  for (const order of orders(job)) {
    const without = bottomLeft(lay, job, fields, order);
    if (without.length === 0) return yield { steps: lay.steps, best: { places: lay.places(), left: [] } };
    if (!left || without.length < left.length) left = without;
    yield { steps: lay.steps, best: { left } };
  }
  const random = chance(seed);
  const best: Fitted = { left: left ?? [] };
  for (let tries = 0; ; tries += 1) {
    const [order = []] = orders(job);
    const moved = tries % 2 === 0 ? bottomLeft(lay, job, fields, order) : order.filter(() => random() < 0.3);
    for (const index of moved) strew(lay, job, index, fields, random);
    const patience = Math.min(PATIENCE.most, PATIENCE.first * PATIENCE.more ** tries);
    const rounds = separate(lay, job, fields, { random, patience });
    let round = rounds.next();
    for (; !round.done; round = rounds.next()) yield { steps: lay.steps, best };
    if (round.value === 0) return yield { steps: lay.steps, best: { places: lay.places(), left: [] } };
  }
}

function roomsFor(job: Job, piece: Packed, fields: readonly Field[]) {
  return fields.flatMap((field) =>
    piece.turns.flatMap((shape) => {
      const room = roomFor(job, piece, shape, field);
      return room.right < room.left || room.bottom < room.top ? [] : [{ shape, room }];
    }),
  );
}

function strew(lay: Lay, job: Job, index: number, fields: readonly Field[], random: () => number): void {
  const rooms = roomsFor(job, job.pieces[index] as Packed, fields);
  const found = rooms[Math.floor(random() * rooms.length)];
  if (!found) return;
  const { shape, room } = found;
  const x = room.left + random() * (room.right - room.left);
  lay.put(index, shape, x, room.top + random() * (room.bottom - room.top));
}
