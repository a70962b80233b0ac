import { one } from './choice';
import { openingChoice, straightHemChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits, mayOpen } from './dressed';
import { head, needs, quietly } from './head';

/** A top of a front and a back, its sleeves cut in one with them: from eight numbers with the height, front and back alike but for the neck. */
export const simpleTopHead = head({
  id: 'simple-top',
  bodies: ['upright'],
  level: 'first',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head'],
  opensAt: 'back',
  choices: {
    sleeve: one(['long', 'short'], 'long'),
    opening: openingChoice,
    ...dressedChoices,
    neck: one(['bound', 'faced'], 'bound'),
    hem: straightHemChoice,
  },
  auto: { ...dressedAuto, opening: 'none' },
  suits: dressedSuits(mayOpen),
  needs: [
    ...needs(['neck-girth', 'head-girth', 'chest-girth', 'body-girth']),
    ...needs(['body-length', 'arm-length', 'paw-girth']),
    ...quietly(['shoulder-length', 'front-neck-drop', 'back-neck-drop', 'side-inset', 'front-width', 'back-width']),
    ...quietly(['hem-girth', 'back-body-length', 'side-length', 'upper-arm-girth', 'underarm-length']),
    ...quietly(['arm-root-girth', 'armhole-depth']),
  ],
});
