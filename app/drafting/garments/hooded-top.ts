import type { Hems, HoodEdges, Hoods, Opens, PocketCut, Pockets, Sleeves, Wrists } from '../heads/choices';
import { hoodedTopHead } from '../heads/hooded-top';
import { assemble } from '../rows/garment';
import type { RefTo } from '../rows/names';
import type { Sizes } from '../sizes/maker';
import { armholeParts } from './parts/armhole';
import { bodicePart } from './parts/bodice';
import { earsPart } from './parts/ears';
import { fastenedPart } from './parts/fastened';
import { wristRole } from './parts/hem';
import { hoodPart } from './parts/hood';
import { leavesChin } from './parts/hood-match';
import { levelHemPart } from './parts/level-hem';
import { pocketParts, pocketPlace } from './parts/pocket';
import { ribbedHemParts } from './parts/ribbed-hem';
import { isRibbedHood, ribbedHoodParts } from './parts/ribbed-hood';
import { sleeveParts } from './parts/sleeves';
import { slitPart } from './parts/slit';
import { armOf, frontNeckline, type NeckRef, type Top } from './parts/top';

type Choices = Sleeves & Wrists & HoodEdges & Opens & Hems & Pockets & PocketCut;
const top: Top<Choices> = {
  arm: armOf,
  lined: () => false,
  neckEndBound: () => false,
  cuff: wristRole,
  waisted: false,
  slit: 'front',
  pocket: pocketPlace,
};

export const hoodedTop = assemble(hoodedTopHead, [
  fastenedPart,
  bodicePart(top, { chin: ({ chinGap }: Sizes<'chinGap'>) => chinGap }),
  ...ribbedHemParts(top),
  ...sleeveParts,
  levelHemPart,
  hoodPart<Choices, NeckRef>({
    front: frontNeckline(top),
    back: (): RefTo<'back.neckline'>[] => [{ piece: 'back', edge: 'neckline', back: true }],
    chin: (): RefTo<'front.chin'>[] => [{ piece: 'front', edge: 'chin' }],
    opensBehind: ({ opening }: Choices) => opening === 'back',
    ribbed: isRibbedHood,
  }),
  ...ribbedHoodParts,
  ...armholeParts(top),
  slitPart<Choices & Hoods>('front', top.lined, leavesChin),
  ...pocketParts,
  earsPart,
]);
