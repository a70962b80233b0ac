import { share } from './choice';
import { hemChoice } from './choices';
import { head, needs } from './head';

/** A tube for each lower arm, hemmed at both ends. */
export const wristWarmersHead = head({
  id: 'wrist-warmers',
  bodies: ['upright'],
  level: 'first',
  looks: ['stuffing'],
  choices: { covers: share(0.25, 0.7, 0.4), hem: hemChoice },
  auto: {},
  needs: needs(['paw-girth', 'upper-arm-girth', 'arm-length']),
});
