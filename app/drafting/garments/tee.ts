import { teeHead } from '../heads/tee';
import { assemble } from '../rows/garment';
import { bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { levelHemPart } from './parts/level-hem';
import { neckParts } from './parts/neck';
import { ribbedHemParts } from './parts/ribbed-hem';
import { sleeveParts } from './parts/sleeves';
import { slitLoopPart, slitPart } from './parts/slit';
import { isFacedInside, sleevedTop } from './parts/tops';

const top = sleevedTop('back');

export const tee = assemble(teeHead, [
  fastenedPart,
  bodicePart(top),
  ...ribbedHemParts(top),
  ...sleeveParts,
  levelHemPart,
  ...neckParts(top),
  slitPart('back', isFacedInside),
  slitLoopPart,
]);
