import { bottomLeftAll } from './bottom-left';
import { ALIKE, type Field, type Job, type Strip } from './job';
import type { Lay } from './lay';
import { oneMoved, orders } from './orders';
import { shorter } from './shorter';

/** How much work (numbers read) may have gone into first lays when another order is still tried, and when one more like the best is. */
const FIRST = { orders: 24e6, like: 16e6 } as const;

/** Ever shorter bottom-left fills, in all orders and in some more like the best of them; none where a piece fits nowhere. */
export function* firstLays(
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
