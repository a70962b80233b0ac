import { one } from './choice';
import { hemChoice, type TunicNecks, tunicNeckChoice, type Wings, wingsChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';

const isGored = ({ tunicNeck }: TunicNecks) => tunicNeck === 'gored';

/** A tunic for a round toy: of six gores, closed behind, or straight and drawn in at the neck; with a way out for wings or arms. */
export const tunicHead = head({
  id: 'tunic',
  bodies: ['round'],
  level: 'practice',
  looks: ['stuffing', 'tail'],
  opensAt: 'back',
  choices: {
    tunicNeck: tunicNeckChoice,
    wings: wingsChoice,
    opening: one(['back'], 'back'),
    ...dressedChoices,
    neck: one(['bound', 'faced'], 'bound'),
    hem: hemChoice,
  },
  auto: dressedAuto,
  suits: { ...dressedSuits<TunicNecks>(isGored), neck: isGored },
  needs: [
    ...needs(['neck-girth', 'top-height', 'top-girth', 'body-girth', 'base-height', 'base-girth', 'hem-girth']),
    ...needs(['height', 'wing-base', 'wing-height'], ({ wings }: Wings) => wings !== 'none'),
  ],
});
