import { one } from './choice';
import {
  gussetChoice,
  legHemChoice,
  legsChoice,
  mayEndSooner,
  shorterChoice,
  tailChoice,
  waistChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';
import { trouserNeeds } from './trousers';

/** Trousers with a bib that stands on their waist, and straps from behind that close on it. */
export const dungareesHead = head({
  id: 'dungarees',
  bodies: ['upright'],
  level: 'practice',
  looks: ['posture', 'legs', 'tail', 'stuffing'],
  choices: {
    trousers: one(['long', 'short'], 'long'),
    straps: one(['crossed', 'straight'], 'crossed'),
    legs: legsChoice,
    waist: waistChoice,
    gusset: gussetChoice,
    tail: tailChoice,
    hem: legHemChoice,
    ...dressedChoices,
    shorterLeg: shorterChoice,
  },
  suits: {
    ...dressedSuits(() => true),
    shorterLeg: mayEndSooner.leg,
  },
  auto: { ...dressedAuto, legs: 'two', waist: 'turned', gusset: 'none', tail: 'open' },
  needs: [...trouserNeeds, ...needs(['chest-girth', 'bodice-height', 'strap-length'])],
});
