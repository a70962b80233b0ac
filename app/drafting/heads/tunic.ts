import { one } from './choice';
import { hemChoice, type Wings, wingsChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';

/** A tunic of six gores for a round toy, closed behind, with a way out for wings or arms. */
export const tunicHead = head({
  id: 'tunic',
  bodies: ['round'],
  level: 'practice',
  looks: ['stuffing', 'tail'],
  opensAt: 'back',
  choices: {
    wings: wingsChoice,
    opening: one(['back'], 'back'),
    ...dressedChoices,
    neck: one(['bound', 'faced'], 'bound'),
    hem: hemChoice,
  },
  auto: dressedAuto,
  suits: dressedSuits(() => true),
  needs: [
    ...needs(['neck-girth', 'top-height', 'top-girth', 'body-girth', 'base-height', 'base-girth', 'hem-girth']),
    ...needs(['height', 'wing-base', 'wing-height'], ({ wings }: Wings) => wings !== 'none'),
  ],
});
