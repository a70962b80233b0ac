// A strip of fixed width as short as can be: first laid bottom-left, then made shorter and separated, again and again; where
// that was too much, let out again little by little.

import { bottomLeftAll, slideIn } from './bottom-left';
import { chance } from './chance';
import { ALIKE, type Field, type Found, type Job, type Strip } from './job';
import { Lay } from './lay';
import { leftFirst, oneMoved, orders } from './orders';
import { separate } from './separate';
import type { Shape } from './shape';
import { squeeze, stretch } from './shorter';

/** By what share a strip is made shorter at a time: at most, at least before starting again, and then. */
const SHORTER = { most: 0.03, least: 0.001, again: 0.01 } as const;
/** What becomes of that share where it was too much, and where it was not. */
const TOO_MUCH = 0.6;
const GOOD = 1.5;
/** Where pieces do not come apart they are given more room, this often, before they start again from the best lay. */
const LET_OUT = 3;
/** Rounds without use before a length is given up: at first, by how much more after each new start, and at most. */
const PATIENCE = { first: 200, more: 1.2, most: 800 } as const;

/** How much work (numbers read) may have gone into first lays when another order is still tried, and when one more like the best is. */
const FIRST = { orders: 24e6, like: 16e6 } as const;

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
  let was = best.length;
  for (let failed = 0; best.length > shortest + ALIKE; ) {
    const starts = failed % (LET_OUT + 1) === 0;
    if (starts && share < SHORTER.least) share = SHORTER.again;
    const field = { ...endless, right: Math.max(shortest, best.length * (1 - share)) };
    if (starts) squeeze(lay, job, best, field, random);
    else stretch(lay, was, field.right);
    was = field.right;
    const patience = PATIENCE.first * PATIENCE.more ** Math.floor(failed / (LET_OUT + 1));
    const rounds = separate(lay, job, [field], { random, patience: Math.min(PATIENCE.most, patience) });
    let round = rounds.next();
    for (; !round.done; round = rounds.next()) yield { steps: lay.steps, best };
    const isApart = round.value === 0;
    if (isApart) {
      for (const index of leftFirst(lay)) slideIn(lay, job, index, field);
      best = shorter(lay, best);
    }
    failed = isApart ? 0 : failed + 1;
    share = isApart ? Math.min(SHORTER.most, share * GOOD) : share * TOO_MUCH;
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
