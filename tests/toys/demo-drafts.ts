import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { bodyFrom, demoCards } from '../../app/measuring';

/** A garment, as it comes, of every demo toy it suits, in a cloth. */
export function demoDrafts(cloth = 'quilting-cotton', garment = 'hooded-top'): readonly Draft[] {
  return demoCards.flatMap((card): readonly Draft[] => {
    const full = fullOrder({ garment, cloth }, card.taken);
    if (!full.ok) throw new Error(full.fault.code);
    if (!full.garment.bodies.includes(card.toy.body)) return [];
    const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
    return outcome.ok ? [outcome.draft] : [];
  });
}
