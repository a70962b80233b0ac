import { one } from './choice';
import { heelChoice, ribbedHemChoice, type Socks } from './choices';
import { head, needs } from './head';

/** A pair of socks: each of two sides with a heel, or a folded piece with one seam, rounded at the toes. */
export const socksHead = head({
  id: 'socks',
  bodies: ['upright'],
  level: 'first',
  looks: ['legs', 'stuffing'],
  choices: { sock: one(['low', 'high'], 'low'), heel: heelChoice, hem: ribbedHemChoice },
  auto: {},
  needs: [
    ...needs(['foot-girth', 'foot-length']),
    ...needs(['thigh-girth', 'inside-leg-length'], ({ sock }: Socks) => sock === 'high'),
  ],
});
