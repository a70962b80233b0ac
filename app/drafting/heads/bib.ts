import { dressedAuto, dressedChoices, looseSuits } from './dressed';
import { head, needs } from './head';

/** A bib of two layers sewn together all round, turned, and closed behind the neck: no ties. */
export const bibHead = head({
  id: 'bib',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'first',
  looks: [],
  choices: dressedChoices,
  auto: dressedAuto,
  suits: looseSuits,
  needs: needs(['neck-girth', 'bib-length']),
});
