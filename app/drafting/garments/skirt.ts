import { assemble, type Passage } from './garment';
import { skirtChoice, skirtPart } from './parts/skirt';
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
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: {},
  },
  [skirtPart, waistbandPart, { passages: [hips] }],
);
