import { one } from './choice';
import { armholeChoice, casedHemChoice, neckChoice, openingChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits, mayOpen } from './dressed';
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
    ...dressedChoices,
    sleeve: one(['short', 'long', 'puffed'], 'short'),
    armhole: armholeChoice,
    neck: neckChoice,
    hem: casedHemChoice,
  },
  auto: { ...dressedAuto, opening: 'none', armhole: 'set-in' },
  suits: { ...dressedSuits(mayOpen), armhole: ({ sleeve }, value) => sleeve !== 'puffed' || value !== 'in-one' },
  needs: [...topNeeds, ...needs(sleeveNeeds), ...quietly(sleeveQuiet)],
});
