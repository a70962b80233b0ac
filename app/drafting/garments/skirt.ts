import { assemble } from './garment';
import { skirtChoice, skirtPart } from './parts/skirt';
import { waistbandPart } from './parts/waistband';

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
  [skirtPart, waistbandPart],
);
