import {
  type Dressed,
  type Hems,
  type HoodEdges,
  isOldBand,
  laps,
  type Opens,
  type PocketCut,
  type Pockets,
  type Sleeves,
  type Wrists,
} from '../heads/choices';
import { jacketHead } from '../heads/jacket';
import { assemble } from '../rows/garment';
import type { RefTo } from '../rows/names';
import { allOnly, only, part } from '../rows/part';
import type { Sizes } from '../sizes/maker';
import { BAND_PAST_MM } from '../sizes/scale';
import { bodicePart, zipIn } from './parts/bodice';
import { flatPart, standingPart } from './parts/collars';
import { earsPart } from './parts/ears';
import { fastenedPart } from './parts/fastened';
import { readyNote, wristRole } from './parts/hem';
import { hoodPart } from './parts/hood';
import { levelHemPart } from './parts/level-hem';
import { pocketParts, pocketPlace } from './parts/pocket';
import { ribbedHemParts } from './parts/ribbed-hem';
import { isRibbedHood, ribbedHoodParts } from './parts/ribbed-hood';
import { sleeveParts } from './parts/sleeves';
import { armOf, frontNeckline, type NeckRef, type Top } from './parts/top';

type Collars = { readonly collar: 'hood' | 'band' | 'flat' };
type Choices = Collars & Sleeves & Wrists & HoodEdges & Opens & Hems & Pockets & PocketCut & Pick<Dressed, 'closedBy'>;

const has = (collar: Collars['collar']) => (choices: Collars) => choices.collar === collar;
const isHooded = has('hood');
const top: Top<Choices> = {
  arm: armOf,
  lined: () => false,
  neckEndBound: () => false,
  neckBanded: has('band'),
  zipped: (choices) => !laps(choices),
  banded: isOldBand,
  cuff: wristRole,
  waisted: false,
  slit: 'back',
  pocket: (choices, wearer) => pocketPlace(choices, wearer, laps(choices)),
};
const inFront = () => 'front' as const;

/** Its front edges are those of an old garment: nothing but their upper ends is sewn. */
const oldBandPart = only(
  isOldBand,
  part<{ choices: Choices; size: never; edge: 'front.neck-end' }>({
    seams: [
      { name: 'front-neck-end', sewn: 2, kind: 'folded', first: [{ piece: 'front', edge: 'neck-end' }], second: [] },
    ],
    notes: [readyNote, { code: 'band-middle', measures: [], told: () => ({ past: BAND_PAST_MM }) }],
  }),
);

/** A zip shorter than this is not worth sewing in (common practice, no source). */
const SHORTEST_ZIP_MM = 60;

/** Where so short an opening would take a zip it is given hook and loop. */
const zipPart = part<{ choices: Choices; size: never; edge: 'front.centre' }>({
  instead: [
    {
      choice: 'closedBy',
      from: 'zip',
      to: 'hook-and-loop',
      code: 'zip-too-short',
      because: 'short-opening',
      check: [],
      when: ({ length, choices, wearer }) => zipIn(length('front.centre'), choices, wearer) < SHORTEST_ZIP_MM,
    },
  ],
});

export const jacket = assemble(jacketHead, [
  fastenedPart,
  bodicePart(top, {
    chin: (sizes: Sizes<'chinGap'>, choices: Choices) => (isHooded(choices) ? sizes.chinGap : null),
  }),
  zipPart,
  oldBandPart,
  ...ribbedHemParts(top),
  ...sleeveParts,
  levelHemPart,
  only(
    isHooded,
    hoodPart<Choices, NeckRef>({
      front: frontNeckline(top),
      back: (): RefTo<'back.neckline'>[] => [{ piece: 'back', edge: 'neckline', back: true }],
      chin: (): RefTo<'front.chin'>[] => [{ piece: 'front', edge: 'chin' }],
      opensBehind: () => false,
      ribbed: isRibbedHood,
    }),
  ),
  ...allOnly(isHooded, ribbedHoodParts),
  only(has('band'), standingPart(top, inFront)),
  only(has('flat'), flatPart(top, inFront)),
  ...pocketParts,
  only(isHooded, earsPart),
]);
