import { one } from './choice';
import { armholeChoice, hemChoice, neckChoice, openingChoice } from './choices';
import { head, needs } from './head';
import { bodiceNeeds, sleeveNeeds } from './needed';

/** A long, swinging shirt with sleeves, down past the hips. */
export const nightshirtHead = head({
  id: 'nightshirt',
  bodies: ['upright'],
  level: 'practice',
  opensAt: 'front',
  opensFirmAt: 'back',
  choices: {
    opening: openingChoice,
    sleeve: one(['long', 'short', 'puffed'], 'long'),
    armhole: armholeChoice,
    neck: neckChoice,
    hem: hemChoice,
  },
  auto: { opening: 'none', armhole: 'set-in' },
  needs: [...needs(bodiceNeeds), ...needs(['underarm-to-waist', 'waist-to-hem', 'hip-girth']), ...needs(sleeveNeeds)],
});
