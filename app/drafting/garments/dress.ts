import type { Mm, Traits } from '../../body';
import {
  type Bodices,
  type Hems,
  isBand,
  isRound,
  type Necks,
  type Opens,
  type Skirts,
  type Sleeves,
  type Wrists,
} from '../heads/choices';
import { dressHead } from '../heads/dress';
import { assemble } from '../rows/garment';
import type { Look, RefTo } from '../rows/names';
import { allOnly, only, part } from '../rows/part';
import { gaping, openedForHead, openedForHeadBelowBand } from '../sizes/deeper-opening';
import type { Sizes, SizesOf } from '../sizes/maker';
import { drawnGirth } from '../sizes/trunk';
import { waistOf, waistSizes } from '../sizes/waist';
import { armholeParts } from './parts/armhole';
import { backCasingPart } from './parts/back-casing';
import { type BandGives, bandPart } from './parts/band';
import { bandTopParts } from './parts/band-top';
import { type BodiceGives, bodicePart } from './parts/bodice';
import { fastenedPart } from './parts/fastened';
import { wristRole } from './parts/hem';
import { neckParts } from './parts/neck';
import {
  type Hangs,
  hungSkirtPart,
  isPleated,
  panelsPart,
  type SkirtChoices,
  type SkirtGives,
  skirtWaist,
} from './parts/skirt';
import { sleeveParts } from './parts/sleeves';
import { tankPart } from './parts/tank';
import { tiersPart } from './parts/tiers';
import { armOf, type Top } from './parts/top';
import { isBandedAtNeck, isBoundAtNeck, isFacedInOne, isLinedAtNeck } from './parts/tops';

const hangs = (choices: Bodices) => !isBand(choices);
const isTank = ({ bodice }: Bodices) => bodice === 'tank';
/** The bodice goes all the way round; behind a half circle the skirt hangs from an elastic. */
const isAround = (choices: Bodices) => !isRound(choices);

const top: Top<Sleeves & Wrists & Necks & Opens & Hems> = {
  arm: armOf,
  lined: isLinedAtNeck,
  neckEndBound: isBoundAtNeck,
  neckBanded: isBandedAtNeck,
  facedInOne: isFacedInOne,
  cuff: wristRole,
  waisted: true,
  slit: 'back',
};

/** It opens behind as its bodice does; in front alone it hangs from a half circle. */
const hung = {
  opens: ({ opening }) => opening === 'back',
  loose: (side, choices) => side === 'back' && isRound(choices),
} as const satisfies Hangs<SkirtChoices & Opens & Bodices>;

/** A bodice from the shoulders cut off at the waist. */
const cutOff = part<
  { choices: object; size: BodiceGives['size']; edge: never },
  { size: SizesOf<typeof waistSizes>; edge: never }
>({ sizes: [waistSizes] });

/** Opened behind, it lets the head in. */
const letsIn = part<
  {
    choices: Skirts;
    size: BodiceGives['size'] | SkirtGives['size'];
    edge: never;
  },
  { size: 'skirtOpen'; edge: never }
>({ sizes: [openedForHead] });
const bandLetsIn = part<
  {
    choices: Skirts;
    size: BandGives['size'] | SkirtGives['size'];
    edge: never;
  },
  { size: 'skirtOpen'; edge: never }
>({ sizes: [openedForHeadBelowBand] });

type Waist = {
  readonly choices: Bodices & Opens & Skirts;
  readonly size: BodiceGives['size'] | BandGives['size'] | SkirtGives['size'];
  readonly edge: BodiceGives['edge'] | SkirtGives['edge'];
};

/** With the back open all the way, everything from the neck to the end of the skirt's opening opens with it. */
const opened = {
  shoulders: (s: Sizes<'frontLength' | 'frontNeckDrop' | 'skirtOpen'>) =>
    2 * (s.frontLength - s.frontNeckDrop + s.skirtOpen),
  band: (s: Sizes<'bandHeight' | 'skirtOpen'>) => 2 * (s.bandHeight + s.skirtOpen),
};
const isOpenToHem = ({ skirtOpen, skirtLength }: Sizes<'skirtOpen' | 'skirtLength'>) => skirtOpen >= skirtLength;

const finishedWaist = ({ choices, sizes }: Look<Waist>): Mm =>
  hangs(choices) ? drawnGirth(sizes, 'hem') : sizes.waist;

/** Where the skirt is sewn to the bodice: all round, or in front alone. */
const waist = part<Waist>({
  unsuited: [
    ...(['back', 'auto'] as const).map((from) => ({
      choice: 'opening' as const,
      from,
      to: 'none' as const,
      ...(from === 'back' ? { code: 'opening-none-instead' } : {}),
      when: (_: Traits, choices: Waist['choices']) => isRound(choices),
    })),
    // Held up by straps alone, it fits the chest closely: it opens behind unless she wishes otherwise.
    {
      choice: 'opening',
      from: 'auto',
      to: 'back',
      when: (_, choices) => isBand(choices) && !isRound(choices),
    },
  ],
  passages: [
    {
      measure: 'head-girth',
      through: 'waist',
      gives: (sizes) => drawnGirth(sizes, 'hem'),
      seamed: true,
      opened: opened.shoulders,
      whole: isOpenToHem,
      steppedInto: 'hip-girth',
      when: (choices) => isAround(choices) && hangs(choices),
    },
    {
      measure: 'head-girth',
      through: 'waist',
      gives: ({ waist }) => waist,
      seamed: true,
      opened: opened.band,
      whole: isOpenToHem,
      steppedInto: 'hip-girth',
      when: (choices) => isAround(choices) && isBand(choices),
    },
    {
      measure: 'head-girth',
      // Its strap is fastened behind the neck: it may be stepped into.
      or: 'hip-girth',
      through: 'waist',
      gives: ({ waist, looseTop }) => waist / 2 + 2 * looseTop,
      seamed: true,
      when: isRound,
    },
  ],
  seams: [
    {
      name: 'waist',
      sewn: 2,
      first: (choices): RefTo<Waist['edge']>[] => [
        { piece: 'front', edge: 'hem', back: true },
        ...(isAround(choices) ? [{ piece: 'back', edge: 'hem' } as const] : []),
      ],
      second: (choices) => (isRound(choices) ? skirtWaist.slice(0, 1) : skirtWaist),
      longer: (choices) => (isPleated(choices) ? 'pleated' : 'gathered'),
      cornered: true,
    },
  ],
  notes: [
    {
      code: 'skirt-gapes',
      measures: ['head-girth'],
      told: ({ wearer, sizes }) => {
        const by = gaping(wearer, sizes);
        return by === null ? null : { by };
      },
      when: ({ opening }) => opening === 'back',
    },
  ],
  fit: [
    {
      place: 'waist',
      measure: 'waist-girth',
      garment: finishedWaist,
      asked: ({ wearer }) => waistOf(wearer),
      because: () => 'lean',
    },
  ],
});

export const dress = assemble(dressHead, [
  fastenedPart,
  only(
    hangs,
    bodicePart(top, {
      below: ({ skirtOpen }: Sizes<'skirtOpen' | 'skirtLength'>) => skirtOpen,
      throughout: isOpenToHem,
      orBy: 'hip-girth',
    }),
  ),
  only(hangs, cutOff),
  only(isTank, tankPart),
  ...allOnly(hangs, sleeveParts),
  ...allOnly(hangs, neckParts(top)),
  ...allOnly(hangs, armholeParts(top)),
  ...allOnly(isBand, [bandPart, ...bandTopParts]),
  hungSkirtPart(hung),
  only(hangs, letsIn),
  only(isBand, bandLetsIn),
  panelsPart(hung),
  tiersPart,
  backCasingPart,
  waist,
]);
