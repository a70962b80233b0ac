import { bareNeckChoice, openingChoice, ribbedHemChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits, mayOpen } from './dressed';
import { head, needs, quietly } from './head';
import { bareNeeds, bareQuiet, topNeeds } from './needed';

/** A top without sleeves, cut wide at the neck; neck and armholes are bound, faced or collared. */
export const tankHead = head({
  id: 'tank',
  bodies: ['upright'],
  level: 'practice',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head'],
  opensAt: 'back',
  choices: {
    opening: openingChoice,
    ...dressedChoices,
    neck: bareNeckChoice,
    hem: ribbedHemChoice,
  },
  auto: { ...dressedAuto, neck: 'bound', opening: 'none' },
  suits: dressedSuits(mayOpen),
  needs: [...topNeeds, ...needs(bareNeeds), ...quietly(bareQuiet)],
});
