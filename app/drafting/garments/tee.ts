import { teeHead } from '../heads/tee';
import { assemble } from '../rows/garment';
import { bodicePart } from './parts/bodice';
import { neckParts } from './parts/neck';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';
import { isFacedInside, sleevedTop } from './parts/tops';

const top = sleevedTop('back');

export const tee = assemble(teeHead, [bodicePart(top), sleevePart, ...neckParts(top), slitPart('back', isFacedInside)]);
