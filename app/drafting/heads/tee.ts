import { one } from './choice';
import { armholeChoice, casedHemChoice, neckChoice, openingChoice } from './choices';
import { head, needs, quietly } from './head';
import { sleeveNeeds, sleeveQuiet, topNeeds } from './needed';

/** A plain top with sleeves; opens behind when the head does not pass. */
export const teeHead = head({
  id: 'tee',
  bodies: ['upright'],
  level: 'practice',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head'],
  opensAt: 'back',
  choices: {
    opening: openingChoice,
    sleeve: one(['short', 'long', 'puffed'], 'short'),
    armhole: armholeChoice,
    neck: neckChoice,
    hem: casedHemChoice,
  },
  auto: { opening: 'none', armhole: 'set-in' },
  suits: { armhole: ({ sleeve }, value) => sleeve !== 'puffed' || value !== 'in-one' },
  needs: [...topNeeds, ...needs(sleeveNeeds), ...quietly(sleeveQuiet)],
});
