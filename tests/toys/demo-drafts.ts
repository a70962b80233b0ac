import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { bodyFrom, demoCards } from '../../app/measuring';

/** The hooded top of every demo toy it suits, in a cloth. */
export function demoDrafts(cloth = 'quilting-cotton'): readonly Draft[] {
  return demoCards.flatMap((card): readonly Draft[] => {
    if (card.toy.body !== 'upright') return [];
    const full = fullOrder({ garment: 'hooded-top', cloth }, card.taken);
    if (!full.ok) throw new Error(full.fault.code);
    const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
    return outcome.ok ? [outcome.draft] : [];
  });
}
