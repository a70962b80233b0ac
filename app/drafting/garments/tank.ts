import type { Hems, Necks, Opens } from '../heads/choices';
import { tankHead } from '../heads/tank';
import { assemble } from '../rows/garment';
import { armholeParts } from './parts/armhole';
import { bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { levelHemPart } from './parts/level-hem';
import { neckParts } from './parts/neck';
import { ribbedHemParts } from './parts/ribbed-hem';
import { slitLoopPart, slitPart } from './parts/slit';
import { tankPart } from './parts/tank';
import type { Top } from './parts/top';
import { isBandedAtNeck, isBoundAtNeck, isFacedInOne, isFacedInside, isLinedAtNeck } from './parts/tops';

const top: Top<Necks & Opens & Hems> = {
  arm: () => 'bare',
  lined: isLinedAtNeck,
  neckEndBound: isBoundAtNeck,
  neckBanded: isBandedAtNeck,
  facedInOne: isFacedInOne,
  waisted: false,
  slit: 'back',
};

export const tank = assemble(tankHead, [
  fastenedPart,
  bodicePart(top),
  ...ribbedHemParts(top),
  tankPart,
  levelHemPart,
  ...neckParts(top),
  ...armholeParts(top),
  slitPart('back', isFacedInside),
  slitLoopPart,
]);
