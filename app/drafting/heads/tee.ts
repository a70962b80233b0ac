import { one } from './choice';
import {
  armholeChoice,
  mayEndSooner,
  neckChoice,
  openingChoice,
  ribbedHemChoice,
  shorterChoice,
  wristChoice,
} from './choices';
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
    wrist: wristChoice,
    neck: neckChoice,
    hem: ribbedHemChoice,
    shorterSleeve: shorterChoice,
  },
  auto: { ...dressedAuto, opening: 'none', armhole: 'set-in', wrist: 'turned' },
  suits: {
    wrist: ({ sleeve }) => sleeve !== 'puffed',
    ...dressedSuits(mayOpen),
    armhole: ({ sleeve }, value) => sleeve !== 'puffed' || value !== 'in-one',
    shorterSleeve: mayEndSooner.sleeve,
  },
  needs: [...topNeeds, ...needs(sleeveNeeds), ...quietly(sleeveQuiet)],
});
