import { assemble, type Passage } from '../rows/garment';
import { panelsChoice, skirtChoice, skirtPart } from './parts/skirt';
import { tiersPart } from './parts/tiers';
import { waistbandPart } from './parts/waistband';

/** Feet first: the hips pass the waist, or its opening. */
const hips: Passage = {
  measure: 'hip-girth',
  through: 'waist',
  gives: ({ waist = 0, skirtOpen = 0, skirtTop = 0 }) => (skirtOpen > 0 ? waist + 2 * skirtOpen : 4 * skirtTop),
};

/** A skirt from the waist: gathered, pleated, flared or in tiers, on a band or an elastic. */
export const skirt = assemble(
  {
    id: 'skirt',
    bodies: ['upright'],
    choices: {
      skirt: skirtChoice,
      panels: panelsChoice,
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: { panels: 'two' },
  },
  [skirtPart, tiersPart, waistbandPart, { passages: [hips] }],
);
