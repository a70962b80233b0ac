import { casedHemChoice, neckChoice, openingChoice } from './choices';
import { head, needs, quietly } from './head';
import { bareNeeds, bareQuiet, topNeeds } from './needed';

/** A top without sleeves, cut wide at the neck; neck and armholes are bound, faced or collared. */
export const tankHead = head({
  id: 'tank',
  bodies: ['upright'],
  level: 'practice',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head'],
  opensAt: 'back',
  choices: { opening: openingChoice, neck: neckChoice, hem: casedHemChoice },
  auto: { opening: 'none' },
  needs: [...topNeeds, ...needs(bareNeeds), ...quietly(bareQuiet)],
});
