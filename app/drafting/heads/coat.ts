import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';

/** The simple coat for four legs: a flat back, tabs that lap on the chest, a band under the belly. */
export const coatHead = head({
  id: 'coat',
  bodies: ['four-legged'],
  level: 'first',
  looks: [],
  choices: dressedChoices,
  auto: dressedAuto,
  suits: dressedSuits(() => true),
  needs: needs(['neck-girth', 'chest-girth', 'back-length']),
});
