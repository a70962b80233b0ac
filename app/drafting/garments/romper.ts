import type { Hems, Necks, Opens, Sleeves, Wrists } from '../heads/choices';
import { romperHead } from '../heads/romper';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import type { Sizes, SizesOf } from '../sizes/maker';
import { romperSizes } from '../sizes/romper';
import { drawnGirth } from '../sizes/trunk';
import { waistOf, waistSizes } from '../sizes/waist';
import { armholeParts } from './parts/armhole';
import { type BodiceGives, bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { wristRole } from './parts/hem';
import { hasLegs, type LegChoices, type LegGives } from './parts/leg-names';
import { legsPart } from './parts/legs';
import { neckParts } from './parts/neck';
import { sleeveParts } from './parts/sleeves';
import { armOf, type Top } from './parts/top';
import { isBandedAtNeck, isBoundAtNeck, isLinedAtNeck } from './parts/tops';

const top: Top<Sleeves & Wrists & Necks & Opens & Hems> = {
  arm: armOf,
  lined: isLinedAtNeck,
  neckEndBound: isBoundAtNeck,
  neckBanded: isBandedAtNeck,
  cuff: wristRole,
  waisted: true,
  slit: 'back',
};

/** The bodice ends at the waist. */
const cutOff = part<
  { choices: object; size: BodiceGives['size']; edge: never },
  { size: SizesOf<typeof waistSizes>; edge: never }
>({ sizes: [waistSizes] });

type Takes = {
  readonly choices: LegChoices;
  readonly size: BodiceGives['size'] | LegGives['size'];
  readonly edge: BodiceGives['edge'] | LegGives['edge'];
};

/** Legs sewn to the bodice, open behind from the waist as far as the seat asks. */
const joined = part<Takes, { size: SizesOf<typeof romperSizes>; edge: never }>({
  sizes: [romperSizes],
  passages: [
    {
      measure: 'hip-girth',
      through: 'waist',
      gives: (sizes) => drawnGirth(sizes, 'hem'),
      opened: ({ frontLength, frontNeckDrop, legOpen }) => 2 * (frontLength - frontNeckDrop + legOpen),
      seamed: true,
    },
  ],
  seams: [
    {
      name: 'waist',
      sewn: 2,
      first: [
        { piece: 'front', edge: 'hem', back: true },
        { piece: 'back', edge: 'hem' },
      ],
      second: [{ piece: 'leg', edge: 'waist' }],
      longer: 'gathered',
      cornered: true,
    },
    { name: 'seat-opening', sewn: 2, kind: 'folded', first: [{ piece: 'leg', edge: 'opening' }], second: [] },
  ],
  fit: [
    {
      place: 'waist',
      measure: 'waist-girth',
      garment: ({ sizes }) => drawnGirth(sizes, 'hem'),
      asked: ({ wearer }) => waistOf(wearer),
      because: () => 'lean',
    },
    { place: 'loop', measure: 'body-loop', garment: ({ sizes }) => sizes.loop, when: hasLegs },
  ],
});

export const romper = assemble(romperHead, [
  fastenedPart,
  bodicePart(top, { below: ({ legOpen }: Sizes<'legOpen'>) => legOpen, steppedInto: true }),
  cutOff,
  ...sleeveParts,
  ...neckParts(top),
  ...armholeParts(top),
  legsPart,
  joined,
]);
