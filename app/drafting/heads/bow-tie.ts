import { dressedAuto, dressedChoices, looseSuits } from './dressed';
import { head, needs } from './head';

/** A bow that is sewn once and never tied, on a band that closes behind the neck. */
export const bowTieHead = head({
  id: 'bow-tie',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'first',
  looks: [],
  choices: dressedChoices,
  auto: dressedAuto,
  suits: looseSuits,
  needs: needs(['neck-girth']),
});
