import { teeHead } from '../heads/tee';
import { assemble } from '../rows/garment';
import { bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { neckParts } from './parts/neck';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';
import { isFacedInside, sleevedTop } from './parts/tops';

const top = sleevedTop('back');

export const tee = assemble(teeHead, [
  fastenedPart,
  bodicePart(top),
  sleevePart,
  ...neckParts(top),
  slitPart('back', isFacedInside),
]);
