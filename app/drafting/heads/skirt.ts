import { one } from './choice';
import { hemChoice, panelsChoice } from './choices';
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
    hem: hemChoice,
  },
  auto: { panels: 'two' },
  needs: needs(skirtNeeds),
});
