import type { Hems, Opens, Pockets, Sleeves } from '../heads/choices';
import { hoodedTopHead } from '../heads/hooded-top';
import { assemble } from '../rows/garment';
import { armholePart } from './parts/armhole';
import { bodicePart } from './parts/bodice';
import { earsPart } from './parts/ears';
import { hoodPart } from './parts/hood';
import { pocketPart, pocketPlace } from './parts/pocket';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';
import { armOf, halfNeckline, type Top } from './parts/top';

const top: Top<Sleeves & Opens & Hems & Pockets> = {
  arm: armOf,
  lined: () => false,
  waisted: false,
  slit: 'front',
  pocket: pocketPlace,
};

export const hoodedTop = assemble(hoodedTopHead, [
  bodicePart(top),
  sleevePart,
  hoodPart({ neckline: halfNeckline(top), opensBehind: ({ opening }: Opens) => opening === 'back' }),
  armholePart(top),
  slitPart('front', top.lined),
  pocketPart,
  earsPart,
]);
