// A strip of fixed width as short as can be: first laid bottom-left, then made shorter and separated, again and again; where
// that was too much, let out again little by little.

import { bottomLeftAll, slideIn } from './bottom-left';
import { chance } from './chance';
import type { Field, Found, Job, Place } from './job';
import { Lay } from './lay';
import { leftFirst, oneMoved, orders } from './orders';
import { separate } from './separate';
import type { Shape } from './shape';

/** By what share a strip is made shorter at a time: at most, at least before starting again, and then. */
const SHORTER = { most: 0.03, least: 0.001, again: 0.01 } as const;
/** What becomes of that share where it was too much, and where it was not. */
const TOO_MUCH = 0.6;
const GOOD = 1.5;
/** Where pieces do not come apart they are given so much more room, this often, before they start again from the best lay. */
const LET_OUT = 3;
/** Rounds without use before a length is given up: at first, by how much more after each new start, and at most. */
const PATIENCE = { first: 60, more: 1.4, most: 400 } as const;

/** How much work (numbers read) may have gone into first lays when another order is still tried, and when one more like the best is. */
const FIRST = { orders: 24e6, like: 16e6 } as const;

/** Lengths that differ by less are alike. */
const ALIKE = 1e-9;

/** A lay of all pieces on a strip: x along its length from 0, y across its width. */
export type Strip = {
  readonly length: number;
  readonly places: readonly Place[];
};

/**
 * Ever shorter lays: stop asking when one is short enough or took long enough. The first comes at once, as bottom-left fill
 * makes it. Ends by itself where no shorter one can be. Yields between rounds, the best so far each time; the same seed
 * gives the same row. Every piece must fit the width: ends at once, with nothing, where one does not.
 */
export function* packStrip(job: Job, width: number, seed: number): Generator<Found<Strip>, void, void> {
  const lay = new Lay(job);
  const random = chance(seed);
  const endless: Field = { left: 0, top: 0, right: Infinity, bottom: width };
  const shortest = shortestStrip(job, width);
  let best: Strip | undefined;
  for (best of firstLays(lay, job, endless, shortest, random)) yield { steps: lay.steps, best };
  if (!best) return;
  let share: number = SHORTER.most;
  for (let failed = 0; best.length > shortest + ALIKE; ) {
    const starts = failed % (LET_OUT + 1) === 0;
    if (starts && share < SHORTER.least) share = SHORTER.again;
    const field = { ...endless, right: Math.max(shortest, best.length * (1 - share)) };
    if (starts) squeeze(lay, job, best, field, random);
    const patience = PATIENCE.first * PATIENCE.more ** Math.floor(failed / (LET_OUT + 1));
    const rounds = separate(lay, job, [field], { random, patience: Math.min(PATIENCE.most, patience) });
    let round = rounds.next();
    for (; !round.done; round = rounds.next()) yield { steps: lay.steps, best };
    if (round.value) {
      for (const index of leftFirst(lay)) slideIn(lay, job, index, field);
      best = shorter(lay, best);
    }
    failed = round.value ? 0 : failed + 1;
    share = round.value ? Math.min(SHORTER.most, share * GOOD) : share * TOO_MUCH;
    yield { steps: lay.steps, best };
  }
}

/** Ever shorter bottom-left fills, in all orders and in some more like the best of them; none where a piece fits nowhere. */
function* firstLays(
  lay: Lay,
  job: Job,
  endless: Field,
  shortest: number,
  random: () => number,
): Generator<Strip, void, void> {
  let best: Strip | undefined;
  let like: readonly number[] = [];
  const attempt = (order: readonly number[]): boolean => {
    if (!bottomLeftAll(lay, job, [{ ...endless, right: best?.length ?? Infinity }], order)) return false;
    best = shorter(lay, best);
    like = order;
    return true;
  };
  for (const order of orders(job)) if ((!best || lay.work < FIRST.orders) && attempt(order) && best) yield best;
  while (best && best.length > shortest + ALIKE && lay.work < FIRST.like)
    if (attempt(oneMoved(like, random))) yield best;
}

function shorter(lay: Lay, best: Strip | undefined): Strip {
  let length = 0;
  for (let index = 0; index < lay.movable; index += 1) length = Math.max(length, lay.right[index] as number);
  return best && best.length <= length ? best : { length, places: lay.places() };
}

/** All that lies to the right of a cut somewhere moves left by what is taken out; what then sticks out is moved in. */
function squeeze(lay: Lay, { pieces }: Job, best: Strip, field: Field, random: () => number): void {
  const { right: length, bottom: across } = field;
  const { places, length: was } = best;
  const shortened = was - length;
  const cut = random() * length;
  const widthOf = (shape: number): number => (lay.stock.shapes[shape] as Shape).width;
  places.forEach(({ shape: before, x, y }, index) => {
    const fits = widthOf(before) <= length + ALIKE;
    const shape = fits ? before : (pieces[index]?.turns.find((turn) => widthOf(turn) <= length + ALIKE) ?? before);
    const moved = x + widthOf(before) / 2 > cut ? x - shortened : x;
    const top = Math.max(0, Math.min(y, across - (lay.stock.shapes[shape] as Shape).height));
    lay.put(index, shape, Math.min(Math.max(0, moved), Math.max(0, length - widthOf(shape))), top);
  });
}

/** No lay is shorter: the pieces' area takes it, and so does the longest of them. */
export function shortestStrip({ stock, pieces }: Job, width: number): number {
  const area = pieces.reduce((sum, { turns }) => sum + (stock.shapes[turns[0] ?? 0]?.area ?? 0), 0);
  const least = pieces.map(({ turns }) =>
    Math.min(
      ...turns.flatMap((turn) => {
        const shape = stock.shapes[turn] as Shape;
        return shape.height <= width + ALIKE ? [shape.width] : [];
      }),
    ),
  );
  return Math.max(area / width, ...least);
}
