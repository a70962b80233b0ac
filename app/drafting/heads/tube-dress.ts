import { hemChoice } from './choices';
import { head, needs } from './head';

/** A dress of two straight pieces, drawn in round the neck by an elastic: never by a cord. */
export const tubeDressHead = head({
  id: 'tube-dress',
  bodies: ['upright'],
  level: 'first',
  looks: ['stuffing', 'head'],
  choices: { hem: hemChoice },
  auto: {},
  needs: needs([
    'head-girth',
    'neck-girth',
    'chest-girth',
    'hip-girth',
    'armhole-depth',
    'underarm-to-waist',
    'waist-to-hem',
  ]),
});
