import { pants as pantsBlock } from '../blocks/pants';
import { slitFacing } from '../blocks/slit-facing';
import { pantsHead } from '../heads/pants';
import { assemble } from '../rows/garment';
import type { Look } from '../rows/names';
import { allOnly, part } from '../rows/part';
import { piece } from '../rows/piece-row';
import { elasticFor } from '../sizes/fastening';
import { TWO_ROUND } from '../sizes/leg';
import { pantsSizes } from '../sizes/pants';
import { PAST_CENTRE_MM } from '../sizes/scale';
import { elasticWaist } from './parts/elastic-waist';
import { fastenedPart } from './parts/fastened';
import { legCasingPart } from './parts/leg-casing';
import { tailInside } from './parts/leg-tail';
import {
  type PantsChoices as Choices,
  type PantsGives as Gives,
  hasLegs,
  isNappy,
  isSewn,
  isTube,
  opensToTail,
  pantsWaist,
  slitsTail,
} from './parts/pants-names';
import { pantsTailSeams, pantsTailToWaist, pantsTailUnsuited, pantsWaistFaced } from './parts/pants-tail';
import { pantsTube, pantsTubeSeams, tubeLaps, tubeTailed, tubeWaist } from './parts/pants-tube';

type Names = Gives & { readonly choices: Choices };

/** Half a pair on its fold; or, where the back opens down to a tail, cut twice. */
const row = (open: boolean) =>
  piece<Names>()('pants', pantsBlock, {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: {
      tailAbove: ({ sizes, choices }) => (open || slitsTail(choices) ? sizes.tailAbove : null),
      tailLong: ({ sizes, choices }) => (open || slitsTail(choices) ? sizes.tailLong : null),
      tailLap: open ? ({ wearer }: Pick<Look, 'wearer'>) => PAST_CENTRE_MM[wearer.scale] : null,
    },
    roles: (choices) => {
      const [waist, side] = isNappy(choices)
        ? (['hem', 'closure'] as const)
        : ([choices.waist === 'faced' ? 'seam' : 'casing', 'seam'] as const);
      return {
        ...{ 'front-waist': waist, 'front-side': side, leg: 'seam', 'back-side': side, 'back-waist': waist },
        ...{ 'tail-closure': 'closure', 'tail-end': 'opening', tail: 'opening', centre: open ? 'seam' : 'fold' },
      };
    },
    cuts: ['slit'],
    when: (choices) => hasLegs(choices) && opensToTail(choices) === open,
  });

/** A tail's slit is faced from so far above it, mm. */
const FACING_ABOVE_MM = 15;
/** So low may it hang before it is said, and so much may a slit lack, mm. */
const HANGS_MM = 6;
/** A leg's edge this much wider than the leg asks for is said to be wide. */
const WIDE_LEG = 1.35;
const MISSING_MM = 1;

const turned = (edge: 'front-side' | 'back-side' | 'front-waist' | 'back-waist', name: string) => ({
  name,
  sewn: 2 as const,
  kind: 'folded' as const,
  first: [{ piece: 'pants' as const, edge }],
  second: [],
  when: isNappy,
});

export const pants = assemble(pantsHead, [
  fastenedPart,
  part<{ choices: Choices; size: never; edge: never }, Gives>({
    sizes: [pantsSizes],
    passages: [
      { measure: 'hip-girth', through: 'waist', gives: ({ hip }) => hip, when: (choices) => !isNappy(choices) },
      { measure: 'foot-girth', through: 'leg-top', gives: ({ pantsLeg }) => pantsLeg, when: isSewn },
    ],
    pieces: [
      row(false),
      row(true),
      pantsTube,
      piece<Names>()('tail-facing', slitFacing, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: { slitLength: 'tailLong', slitAbove: FACING_ABOVE_MM },
        roles: () => ({ top: 'edge', side: 'edge', bottom: 'edge', centre: 'fold' }),
        cuts: ['slit'],
        when: slitsTail,
      }),
    ],
    seams: [
      {
        name: 'pants-side',
        sewn: 2,
        first: [{ piece: 'pants', edge: 'front-side' }],
        second: [{ piece: 'pants', edge: 'back-side', back: true }],
        when: isSewn,
      },
      turned('front-side', 'nappy-front'),
      turned('back-side', 'nappy-back'),
      turned('front-waist', 'nappy-waist-front'),
      turned('back-waist', 'nappy-waist-back'),
      ...pantsTubeSeams,
      ...pantsTailSeams,
    ],
    unsuited: [
      { choice: 'legs', from: 'auto', to: 'tube', code: 'pants-in-a-tube', when: ({ legs }) => legs === 'sewn' },
      { choice: 'legs', from: 'two', to: 'tube', code: 'pants-in-a-tube', when: ({ legs }) => legs === 'sewn' },
      {
        choice: 'legs',
        from: 'tube',
        to: 'two',
        when: ({ legs }, { pants: kind }) => legs !== 'sewn' && kind === 'nappy',
      },
      { choice: 'pants', from: 'nappy', to: 'pants', code: 'no-nappy', when: ({ legs }) => legs === 'sewn' },
      ...pantsTailUnsuited,
    ],
    instead: [pantsTailToWaist, pantsWaistFaced],
    notes: [
      {
        code: 'leg-edge-wide',
        measures: ['thigh-girth', 'hip-girth'],
        told: ({ sizes: { pantsLeg, pantsLegLeast } }) =>
          pantsLeg > WIDE_LEG * pantsLegLeast ? { top: pantsLeg, thigh: pantsLegLeast } : null,
        when: hasLegs,
      },
      {
        code: 'crotch-hangs',
        measures: ['crotch-length', 'foot-girth', 'thigh-girth'],
        told: ({ sizes: { pantsLonger } }) => (pantsLonger > HANGS_MM ? { by: pantsLonger } : null),
        when: hasLegs,
      },
      tailInside,
      {
        code: 'tail-slit-short',
        measures: ['tail-girth', 'tail-base-girth', 'waist-to-tail'],
        told: ({ sizes: { tailMissing, tailLong } }) =>
          tailMissing > MISSING_MM ? { by: tailMissing, slit: tailLong } : null,
        when: (choices) => slitsTail(choices) || opensToTail(choices) || tubeTailed(choices),
      },
    ],
    fit: [
      { place: 'hip', measure: 'hip-girth', garment: ({ sizes }) => sizes.hip },
      { place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.hip },
      { place: 'thigh', measure: 'thigh-girth', garment: ({ sizes }) => sizes.pantsLeg, when: hasLegs },
      { place: 'crotch', measure: 'crotch-length', garment: ({ sizes }) => sizes.pantsLong, when: hasLegs },
    ],
    notions: [
      {
        kind: 'elastic',
        place: 'pants-hem',
        length: ({ wearer }) => elasticFor(TWO_ROUND * wearer.of('thigh-girth')),
        when: isTube,
      },
      {
        kind: 'closure',
        place: 'nappy-back',
        count: 2,
        length: ({ sizes }) => sizes.pantsSide,
        when: isNappy,
      },
      {
        kind: 'closure',
        place: 'tail-closure',
        length: ({ length, choices }) => length(isTube(choices) ? 'pants-tube.tail-closure' : 'pants.tail-closure'),
        when: (choices) => opensToTail(choices) || tubeLaps(choices),
      },
    ],
  }),
  ...allOnly(isSewn, elasticWaist({ edges: pantsWaist, opens: opensToTail })),
  ...allOnly(isTube, elasticWaist({ edges: tubeWaist, opens: tubeLaps })),
  legCasingPart,
]);
