import { head, needs } from './head';

/** A waistcoat of felt in one piece, cut with scissors and put on: no sewing. */
export const vestHead = head({
  id: 'vest',
  bodies: ['upright'],
  level: 'first',
  looks: ['stuffing'],
  noSewing: { cloth: 'felt' },
  choices: {},
  auto: {},
  needs: needs(['chest-girth', 'across-shoulders', 'upper-arm-girth', 'paw-girth', 'side-length']),
});
