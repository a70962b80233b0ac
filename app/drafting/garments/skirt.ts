import type { Skirts } from '../heads/choices';
import { skirtHead } from '../heads/skirt';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { fastenedPart } from './parts/fastened';
import { type Hangs, isElastic, panelsPart, type SkirtChoices, type SkirtGives, skirtPart } from './parts/skirt';
import { tiersPart } from './parts/tiers';
import { waistbandPart } from './parts/waistband';

const hung = {
  opens: (choices) => !isElastic(choices),
  loose: () => false,
} as const satisfies Hangs<SkirtChoices>;

/** Feet first: the hips pass the waist, or its opening. */
const hips = part<{ choices: Skirts; size: SkirtGives['size']; edge: never }>({
  passages: [
    {
      measure: 'hip-girth',
      through: 'waist',
      gives: ({ waist, skirtOpen }) => waist + 2 * skirtOpen,
      when: (choices) => !isElastic(choices),
    },
    { measure: 'hip-girth', through: 'waist', gives: ({ skirtTop }) => 4 * skirtTop, when: isElastic },
  ],
});

export const skirt = assemble(skirtHead, [
  fastenedPart,
  skirtPart(hung),
  panelsPart(hung),
  tiersPart,
  waistbandPart,
  hips,
]);
