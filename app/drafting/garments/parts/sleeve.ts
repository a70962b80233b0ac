import { flare } from '../../blocks/flare';
import { raglanSleeve } from '../../blocks/raglan';
import { sleeve } from '../../blocks/sleeve';
import type { Part, PieceRow } from '../../rows/garment';
import { LEAST_INSET_MM, LEAST_SHOULDER_MM } from '../../sizes/shoulder';
import { sleeveSizes } from '../../sizes/sleeve';
import { hasSleeve, isRaglan } from './bodice';
import { hemRole } from './hem';
import { armhole, isPuffed, setIn, sleeveMatch } from './sleeve-match';
import { thickness } from './thick';

const shared = { name: 'sleeve', copies: 2, mirrored: true, onFold: false } as const;

const pieces: readonly PieceRow[] = [
  {
    ...shared,
    block: sleeve,
    takes: (look) => ({ capShare: look.length('front', 'armhole') / armhole(look) }),
    roles: (choices) => ({
      'front-cap': 'seam',
      'back-cap': 'seam',
      'back-underarm': 'seam',
      cuff: isPuffed(choices) ? 'seam' : hemRole(choices),
      'front-underarm': 'seam',
    }),
    when: setIn,
  },
  {
    ...shared,
    block: raglanSleeve,
    takes: (look) => ({ frontRaglan: look.length('front', 'armhole'), backRaglan: look.length('back', 'armhole') }),
    roles: (choices) => ({
      'front-raglan': 'seam',
      neck: 'seam',
      'back-raglan': 'seam',
      'back-underarm': 'seam',
      cuff: hemRole(choices),
      'front-underarm': 'seam',
    }),
    when: isRaglan,
  },
  {
    name: 'cuff-band',
    copies: 2,
    mirrored: false,
    onFold: true,
    block: flare,
    sizes: { flareTop: 'cuffBand', flareBottom: 'cuffBand', flareHeight: 'cuffBandCut', flareOpen: 'notOpen' },
    takes: () => ({ cuffBandCut: CUFF_BAND_CUT_MM }),
    roles: () => ({ top: 'seam', side: 'seam', bottom: 'opening', centre: 'fold' }),
    when: isPuffed,
  },
];

/** A puffed sleeve's cuff is bound by a band cut four times as wide as it shows. */
const CUFF_BAND_CUT_MM = 28;

/** Sleeves set into an armhole, or raglan ones where there is no shoulder to set them in. */
export const sleevePart: Part = {
  needs: (['arm-root-girth', 'upper-arm-girth', 'paw-girth', 'arm-length', 'underarm-length'] as const).map(
    (measure) => ({ measure, when: hasSleeve }),
  ),
  sizes: [(wearer, sizes) => (hasSleeve(wearer.choices) ? sleeveSizes(wearer, sizes) : { sizes: {} })],
  passages: [{ measure: 'paw-girth', through: 'cuff', gives: (sizes) => sizes.cuff ?? 0, when: hasSleeve }],
  pieces,
  seams: [
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
      when: setIn,
    },
    {
      name: 'front-raglan',
      sewn: 2,
      first: [{ piece: 'front', edge: 'armhole', back: true }],
      second: [{ piece: 'sleeve', edge: 'front-raglan' }],
      longer: 'gathered',
      when: isRaglan,
    },
    {
      name: 'back-raglan',
      sewn: 2,
      first: [{ piece: 'back', edge: 'armhole' }],
      second: [{ piece: 'sleeve', edge: 'back-raglan' }],
      longer: 'gathered',
      when: isRaglan,
    },
    {
      name: 'underarm',
      sewn: 2,
      first: [{ piece: 'sleeve', edge: 'back-underarm' }],
      second: [{ piece: 'sleeve', edge: 'front-underarm', back: true }],
      when: hasSleeve,
    },
    {
      name: 'cuff',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'sleeve', edge: 'cuff' }],
      second: [],
      when: (choices) => hasSleeve(choices) && !isPuffed(choices),
    },
    {
      name: 'cuff-band-end',
      sewn: 2,
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
      when: isPuffed,
    },
  ],
  match: sleeveMatch,
  notes: [{ code: 'too-thick-to-puff', measures: [], told: thickness, when: isPuffed }],
  instead: [
    {
      choice: 'sleeve',
      from: 'puffed',
      to: 'short',
      code: 'short-instead',
      check: [],
      when: (look) => isRaglan(look.choices),
    },
    {
      choice: 'armhole',
      from: 'set-in',
      to: 'raglan',
      code: 'raglan-instead',
      check: ['shoulder-length', 'armhole-depth', 'upper-arm-girth'],
      when: (look, failed) =>
        setIn(look.choices) &&
        (failed === 'sleeve' ||
          failed === 'arm-root' ||
          (look.sizes.inset ?? 0) < LEAST_INSET_MM - 0.01 ||
          (look.sizes.shoulder ?? 0) < LEAST_SHOULDER_MM),
    },
  ],
  fit: [
    { place: 'bicep', measure: 'upper-arm-girth', garment: (look) => look.sizes.bicep ?? 0, when: hasSleeve },
    {
      place: 'cuff',
      measure: 'paw-girth',
      garment: (look) => look.sizes.cuff ?? 0,
      when: (choices) => choices.sleeve === 'long',
    },
    {
      place: 'armhole',
      measure: 'arm-root-girth',
      garment: armhole,
      when: setIn,
    },
  ],
};
