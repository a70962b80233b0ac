import { one } from './choice';
import {
  armholeChoice,
  mayEndSooner,
  neckChoice,
  openingChoice,
  plainWristChoice,
  shorterChoice,
  straightHemChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits, mayOpen } from './dressed';
import { head, needs, quietly } from './head';
import { belowNeeds, belowQuiet, sleeveNeeds, sleeveQuiet, yokeNeeds, yokeQuiet } from './needed';

/** A long, swinging shirt with sleeves, down past the hips. */
export const nightshirtHead = head({
  id: 'nightshirt',
  bodies: ['upright'],
  level: 'practice',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head'],
  opensAt: 'front',
  opensFirmAt: 'back',
  choices: {
    opening: openingChoice,
    ...dressedChoices,
    sleeve: one(['long', 'short', 'puffed'], 'long'),
    armhole: armholeChoice,
    wrist: plainWristChoice,
    neck: neckChoice,
    hem: straightHemChoice,
    shorterSleeve: shorterChoice,
  },
  auto: { ...dressedAuto, opening: 'none', armhole: 'set-in' },
  suits: {
    wrist: ({ sleeve }) => sleeve !== 'puffed',
    ...dressedSuits(mayOpen),
    armhole: ({ sleeve }, value) => sleeve !== 'puffed' || value !== 'in-one',
    shorterSleeve: mayEndSooner.sleeve,
  },
  needs: [
    ...needs([...yokeNeeds, ...belowNeeds.filter((id) => id !== 'hem-girth')]),
    ...quietly([...yokeQuiet, ...belowQuiet, 'hem-girth']),
    ...needs(['underarm-to-waist', 'waist-to-hem', 'hip-girth']),
    ...needs(sleeveNeeds),
    ...quietly(sleeveQuiet),
  ],
});
