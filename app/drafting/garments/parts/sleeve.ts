import { flare } from '../../blocks/flare';
import { raglanSleeve } from '../../blocks/raglan';
import { sleeve } from '../../blocks/sleeve';
import type { Hems, Sleeves, Wrists } from '../../heads/choices';
import type { Look } from '../../rows/names';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { RIB_SHARE } from '../../sizes/band';
import { elasticFor } from '../../sizes/fastening';
import { inOneSizes } from '../../sizes/in-one';
import type { Sizes, SizesOf } from '../../sizes/maker';
import { BINDING_MM } from '../../sizes/scale';
import { shoulderDart } from '../../sizes/shoulder-dart';
import { sleeveSizes } from '../../sizes/sleeve';
import { wristSizes } from '../../sizes/wrist';
import { isCutAslant, STRIP_WIDTHS } from './binding';
import { HEMMED_FLAT_UNDER_MM, readyNote, wristRole } from './hem';
import { type InOneTakes, inOneSeams } from './in-one';
import { raglanSeams } from './raglan-seams';
import { isRibbed } from './ribbed-wrist';
import { sleeveInstead } from './sleeve-instead';
import {
  type Armholes,
  armhole,
  type Bodiced,
  hasOwnSleeve,
  hasSleeve,
  isInOne,
  isPuffed,
  isRaglan,
  type SleeveNames,
  setIn,
  sleeveMatch,
} from './sleeve-match';
import { thickness, thinBinding } from './thick';

type Gives = {
  readonly size: SizesOf<typeof sleeveSizes> | SizesOf<typeof inOneSizes>;
  readonly edge: EdgesOf<'sleeve', typeof sleeve | typeof raglanSleeve> | EdgesOf<'cuff-band', typeof flare>;
};
type Takes = {
  readonly choices: Sleeves & Hems & Wrists;
  readonly size: Bodiced | InOneTakes['size'];
  readonly edge: Armholes | InOneTakes['edge'];
};
type Names = {
  readonly choices: Takes['choices'];
  readonly size: SleeveNames['size'] | Takes['size'] | Gives['size'];
  readonly edge: SleeveNames['edge'] | Takes['edge'] | Gives['edge'];
};

const pair = { copies: 2, mirrored: true, onFold: false } as const;

/** A puffed sleeve ends in its band; a sleeve that ends on the upper arm has to sit there too. */
function finishedCuff({ cuffBand, cuff }: Sizes<'cuffBand' | 'cuff'>) {
  return Math.min(cuff, 2 * cuffBand);
}
const endsOnArm = (choices: Sleeves) => hasSleeve(choices) && choices.sleeve !== 'long';

/** Laid on a finished cuff, a sleeve is as wide there as above: straight. */
const straightCuff = ({ choices, sizes }: Look<Names>) => (choices.wrist === 'ready' ? sizes.bicep : sizes.cuff);

const pieces = [
  piece<Names>()('sleeve', sleeve, {
    ...pair,
    sizes: {
      cuff: straightCuff,
      capShare: (look) => look.length('front.armhole') / armhole(look),
      // The top lies over the shoulder seam: as far to the front as the back's armhole is longer.
      capForward: (look) => (look.length('back.armhole') - look.length('front.armhole')) / 2,
    },
    roles: (choices) => ({
      'front-cap': 'seam',
      'back-cap': 'seam',
      'back-underarm': 'seam',
      cuff: isPuffed(choices) ? 'seam' : wristRole(choices),
      'front-underarm': 'seam',
    }),
    when: setIn,
  }),
  piece<Names>()('sleeve', raglanSleeve, {
    ...pair,
    sizes: {
      cuff: straightCuff,
      frontRaglan: (look) => look.length('front.armhole'),
      backRaglan: (look) => look.length('back.armhole'),
      dartLong: ({ wearer, sizes }) => shoulderDart(wearer, sizes)?.long ?? null,
      dartTurn: ({ wearer, sizes }) => shoulderDart(wearer, sizes)?.turn ?? null,
    },
    roles: (choices) => ({
      'front-raglan': 'seam',
      'neck-front': 'seam',
      'dart-front': 'seam',
      'dart-back': 'seam',
      'neck-back': 'seam',
      'back-raglan': 'seam',
      'back-underarm': 'seam',
      cuff: wristRole(choices),
      'front-underarm': 'seam',
    }),
    when: isRaglan,
  }),
  piece<Names>()('cuff-band', flare, {
    copies: 2,
    mirrored: false,
    onFold: true,
    sizes: {
      flareTop: 'cuffBand',
      flareBottom: 'cuffBand',
      flareHeight: ({ wearer }) => STRIP_WIDTHS * BINDING_MM[wearer.scale],
    },
    roles: () => ({ side: 'seam', bottom: 'edge', centre: 'fold' }),
    bias: isCutAslant,
    when: isPuffed,
  }),
];

/** Sleeves set into an armhole, cut in one with front and back, or raglan ones where there is no shoulder to set them in. */
export const sleeves = part<Takes, Gives>({
  sizes: [
    { ...sleeveSizes, when: hasSleeve },
    { ...wristSizes, when: hasSleeve },
    { ...inOneSizes, when: isInOne },
  ],
  passages: [
    { measure: 'paw-girth', through: 'cuff', gives: finishedCuff, when: hasSleeve },
    { measure: 'upper-arm-girth', through: 'cuff', gives: finishedCuff, when: endsOnArm },
  ],
  pieces,
  seams: [
    ...inOneSeams.map((seam) => ({
      ...seam,
      when: (choices: Names['choices']) => isInOne(choices) && !(seam.name === 'cuff' && isRibbed(choices)),
    })),
    {
      name: 'armhole',
      sewn: 2,
      first: [
        { piece: 'front', edge: 'armhole', back: true },
        { piece: 'back', edge: 'armhole' },
      ],
      second: [
        { piece: 'sleeve', edge: 'front-cap' },
        { piece: 'sleeve', edge: 'back-cap' },
      ],
      longer: 'gathered',
      tellsFront: true,
      when: setIn,
    },
    ...raglanSeams,
    {
      name: 'underarm',
      sewn: 2,
      // So short or so narrow a sleeve is hemmed while it lies flat.
      after: ({ sleeve }, { cuff }) =>
        sleeve === 'short' || (sleeve === 'long' && cuff < HEMMED_FLAT_UNDER_MM)
          ? ['cuff', 'cuff-rib-edge']
          : ['cuff-rib-edge'],
      first: [{ piece: 'sleeve', edge: 'back-underarm' }],
      second: [{ piece: 'sleeve', edge: 'front-underarm', back: true }],
      when: hasOwnSleeve,
    },
    {
      name: 'cuff',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'sleeve', edge: 'cuff' }],
      second: [],
      when: (choices) => hasOwnSleeve(choices) && !isPuffed(choices) && !isRibbed(choices) && choices.wrist !== 'ready',
    },
    {
      name: 'cuff-band-end',
      sewn: 2,
      from: 'underarm',
      first: [{ piece: 'cuff-band', edge: 'side' }],
      second: [{ piece: 'cuff-band', edge: 'side' }],
      when: isPuffed,
    },
    {
      name: 'cuff-band',
      sewn: 2,
      first: [{ piece: 'cuff-band', edge: 'top', times: 2 }],
      second: [{ piece: 'sleeve', edge: 'cuff', back: true }],
      longer: 'gathered',
      cornered: true,
      bound: true,
      when: isPuffed,
    },
    {
      name: 'cuff-band-inside',
      sewn: 2,
      kind: 'laid',
      first: [{ piece: 'cuff-band', edge: 'top', times: 2 }],
      second: [{ piece: 'cuff-band', edge: 'bottom', times: 2, back: true }],
      when: isPuffed,
    },
  ],
  match: sleeveMatch,
  notions: [
    {
      kind: 'elastic',
      place: 'cuff',
      count: 2,
      length: ({ wearer, choices }) =>
        elasticFor(wearer.of(choices.sleeve === 'long' ? 'paw-girth' : 'upper-arm-girth')),
      when: (choices) => hasSleeve(choices) && !isPuffed(choices) && choices.wrist === 'elastic',
    },
  ],
  notes: [
    { code: 'too-thick-to-puff', measures: [], told: thickness, when: isPuffed },
    { ...thinBinding, when: isPuffed },
    { ...readyNote, when: (choices) => hasSleeve(choices) && choices.wrist === 'ready' },
  ],
  unsuited: [
    { choice: 'wrist', from: 'auto', to: 'elastic', when: (_, { hem }) => hem === 'casing' },
    { choice: 'wrist', from: 'auto', to: 'rib', when: (_, { hem }) => hem === 'rib' },
    // A band of its own ends a puffed one.
    { choice: 'wrist', from: 'ready', to: 'turned', when: (_, { sleeve: kind }) => kind === 'puffed' },
    // Gathered into an armhole, or not at all.
    { choice: 'armhole', from: 'in-one', to: 'set-in', when: (_, { sleeve: kind }) => kind === 'puffed' },
  ],
  instead: sleeveInstead,
  fit: [
    { place: 'bicep', measure: 'upper-arm-girth', garment: ({ sizes }) => sizes.bicep, when: hasSleeve },
    {
      place: 'cuff',
      measure: 'paw-girth',
      garment: (look) => straightCuff(look) * (look.choices.wrist === 'rib' ? RIB_SHARE : 1),
      why: ({ choices }) => (choices.wrist === 'rib' ? 'band-stretches' : null),
      when: (choices) => choices.sleeve === 'long',
    },
    {
      place: 'armhole',
      measure: 'arm-root-girth',
      garment: armhole,
      when: setIn,
    },
  ],
});
