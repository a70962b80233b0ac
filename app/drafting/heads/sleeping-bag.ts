import { hemChoice } from './choices';
import { head, needs } from './head';

/** A bag to sleep in with a pillow: two layers, straight seams, nothing that has to fit closely. */
export const sleepingBagHead = head({
  id: 'sleeping-bag',
  bodies: ['upright', 'round'],
  level: 'first',
  looks: ['stuffing'],
  choices: { hem: hemChoice },
  auto: {},
  needs: needs(['height', 'body-girth']),
});
