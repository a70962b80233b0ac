import type { Hems, Opens, Pockets, Sleeves } from '../heads/choices';
import { hoodedTopHead } from '../heads/hooded-top';
import { assemble } from '../rows/garment';
import type { RefTo } from '../rows/names';
import type { Sizes } from '../sizes/maker';
import { armholeParts } from './parts/armhole';
import { bodicePart } from './parts/bodice';
import { earsPart } from './parts/ears';
import { fastenedPart } from './parts/fastened';
import { hoodPart } from './parts/hood';
import { pocketPart, pocketPlace } from './parts/pocket';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';
import { armOf, frontNeckline, type NeckRef, type Top } from './parts/top';

type Choices = Sleeves & Opens & Hems & Pockets;
const top: Top<Choices> = {
  arm: armOf,
  lined: () => false,
  neckEndBound: () => false,
  waisted: false,
  slit: 'front',
  pocket: pocketPlace,
};

export const hoodedTop = assemble(hoodedTopHead, [
  fastenedPart,
  bodicePart(top, { chin: ({ chinGap }: Sizes<'chinGap'>) => chinGap }),
  sleevePart,
  hoodPart<Choices, NeckRef>({
    front: frontNeckline(top),
    back: (): RefTo<'back.neckline'>[] => [{ piece: 'back', edge: 'neckline', back: true }],
    chin: (): RefTo<'front.chin'>[] => [{ piece: 'front', edge: 'chin' }],
    opensBehind: ({ opening }: Choices) => opening === 'back',
  }),
  ...armholeParts(top),
  slitPart('front', top.lined),
  pocketPart,
  earsPart,
]);
