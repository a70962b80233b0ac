import { head, needs } from './head';

/** A bib of two layers sewn together all round, turned, and closed behind the neck: no ties. */
export const bibHead = head({
  id: 'bib',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'first',
  looks: [],
  choices: {},
  auto: {},
  needs: needs(['neck-girth', 'bib-length']),
});
