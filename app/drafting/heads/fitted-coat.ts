import { one } from './choice';
import { hemChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';

/** A coat round a four-legged toy: back and belly, with holes for the front legs; it opens along belly or back. */
export const fittedCoatHead = head({
  id: 'fitted-coat',
  bodies: ['four-legged'],
  level: 'patience',
  looks: ['stuffing'],
  choices: {
    closes: one(['belly', 'back'], 'belly'),
    ...dressedChoices,
    coatNeck: one(['bound', 'collar'], 'bound'),
    coatLegs: one(['bound', 'sleeves'], 'bound'),
    hem: hemChoice,
  },
  auto: dressedAuto,
  suits: dressedSuits(() => true),
  needs: [
    ...needs([
      'neck-girth',
      'chest-girth',
      'belly-girth',
      'neck-to-leg',
      'nape-to-leg',
      'leg-spread',
      'front-leg-girth',
      'foot-girth',
      'back-length',
      'under-length',
    ]),
    ...needs<{ readonly coatLegs: 'bound' | 'sleeves' }>(
      ['front-leg-length'],
      ({ coatLegs }) => coatLegs === 'sleeves',
    ),
  ],
});
