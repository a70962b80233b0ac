import type { Hems, Necks, Opens } from '../heads/choices';
import { simpleTopHead } from '../heads/simple-top';
import { assemble } from '../rows/garment';
import { bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { hemRole, isReady } from './parts/hem';
import { inOnePart } from './parts/in-one';
import { levelHemPart } from './parts/level-hem';
import { neckParts } from './parts/neck';
import { slitLoopPart, slitPart } from './parts/slit';
import type { Top } from './parts/top';
import { isBoundAtNeck, isFacedInside } from './parts/tops';

const top: Top<Necks & Opens & Hems> = {
  arm: () => 'in-one',
  lined: () => false,
  neckEndBound: isBoundAtNeck,
  // It lies aslant: no finished edge does.
  cuff: (choices) => (isReady(choices) ? 'hem' : hemRole(choices)),
  waisted: false,
  slit: 'back',
};

export const simpleTop = assemble(simpleTopHead, [
  fastenedPart,
  bodicePart(top),
  inOnePart,
  levelHemPart,
  ...neckParts(top),
  slitPart('back', isFacedInside),
  slitLoopPart,
]);
