import { hemChoice } from './choices';
import { head, needs } from './head';

/** A straight scarf, cut along the cloth with its middle on the fold. Short enough not to tangle: see the care notes. */
export const scarfHead = head({
  id: 'scarf',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'first',
  looks: [],
  noSewing: { cloth: 'polar-fleece', choices: { hem: 'raw' } },
  choices: { hem: hemChoice },
  auto: {},
  needs: needs(['scarf-length']),
});
