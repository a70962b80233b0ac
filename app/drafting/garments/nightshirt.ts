import { nightshirtHead } from '../heads/nightshirt';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { longSizes } from '../sizes/long';
import type { SizesOf } from '../sizes/maker';
import { drawnGirth } from '../sizes/trunk';
import { type BodiceGives, bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { levelHemPart } from './parts/level-hem';
import { neckParts } from './parts/neck';
import { sleeveParts } from './parts/sleeves';
import { slitLoopPart, slitPart } from './parts/slit';
import { isFacedInside, sleevedTop } from './parts/tops';

const top = sleevedTop('front');

/** Let down past the hips. */
const long = part<
  { choices: object; size: BodiceGives['size']; edge: never },
  { size: SizesOf<typeof longSizes>; edge: never }
>({
  sizes: [longSizes],
  fit: [{ place: 'hip', measure: 'hip-girth', garment: ({ sizes }) => drawnGirth(sizes, 'hem') }],
});

export const nightshirt = assemble(nightshirtHead, [
  fastenedPart,
  bodicePart(top, { swings: true }),
  long,
  ...sleeveParts,
  levelHemPart,
  ...neckParts(top),
  slitPart('front', isFacedInside),
  slitLoopPart,
]);
