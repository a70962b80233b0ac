import { one } from './choice';
import { type Dressed, isStraight, panelsChoice, type Skirts, straightHemChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs } from './head';
import { skirtNeeds } from './needed';

/** A skirt from the waist: gathered, pleated, flared or in tiers, on a band or an elastic. */
export const skirtHead = head({
  id: 'skirt',
  bodies: ['upright'],
  level: 'practice',
  looks: ['stuffing'],
  choices: {
    skirt: one(['gathered', 'knife', 'box', 'elastic', 'a-line', 'half-circle', 'circle', 'tiers'], 'gathered'),
    panels: panelsChoice,
    ...dressedChoices,
    hem: straightHemChoice,
  },
  auto: { ...dressedAuto, panels: 'two' },
  suits: {
    ...dressedSuits(({ skirt }: Pick<Skirts, 'skirt'> & Dressed) => skirt !== 'elastic'),
    hem: ({ skirt }, value) => value !== 'ready' || isStraight(skirt),
  },
  needs: needs(skirtNeeds),
});
