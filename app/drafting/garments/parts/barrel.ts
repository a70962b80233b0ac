import { barrel } from '../../blocks/barrel';
import type { Hems } from '../../heads/choices';
import type { Both, Look } from '../../rows/names';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { barrelSizes } from '../../sizes/barrel';
import type { SizesOf } from '../../sizes/maker';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { hemRole } from './hem';
import { scrapNeck } from './thick';

/** A coat for four legs: where it opens, and how its neck and its leg holes are finished. */
export type Coats = {
  readonly closes: 'belly' | 'back';
  readonly coatNeck: 'bound' | 'collar' | 'hood';
  readonly coatLegs: 'bound' | 'turned' | 'sleeves';
};
export type BarrelGives = {
  readonly size: SizesOf<typeof barrelSizes>;
  readonly edge: EdgesOf<'coat-back' | 'coat-belly', typeof barrel>;
};
type Takes = { readonly choices: Coats & Hems; readonly size: 'chinGap'; readonly edge: never };
export type CoatNames = Both<Takes, BarrelGives>;
type Half = Coats['closes'];

const halves = ['back', 'belly'] as const;
const opensAt =
  (half: Half) =>
  ({ closes }: Coats) =>
    closes === half;
/** A strip is bound over the very end of the neck; a collar or a hood ends at the centre, and the opening is folded back beside it. */
const neckEndBound = ({ coatNeck }: Coats) => coatNeck === 'bound';
export const isHooded = ({ coatNeck }: Coats) => coatNeck === 'hood';
/** What a hood leaves free of half the neck under the chin; null without. */
const chinOf = ({ choices, sizes }: Pick<Look<CoatNames>, 'choices' | 'sizes'>) =>
  isHooded(choices) && sizes.chinGap > 0 ? sizes.chinGap : null;
/** Half the neck, the chin's part too. */
const halfNeck = (look: Look<CoatNames>) =>
  look.length('coat-back.neckline') +
  look.length('coat-belly.neckline') +
  (chinOf(look) === null ? 0 : look.length('coat-belly.chin'));

const row = (half: Half, open: boolean) =>
  piece<CoatNames>()(`coat-${half}`, barrel, {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: {
      neckX: `${half}NeckX`,
      neckTurn: `${half}NeckTurn`,
      neckEnds: `${half}NeckEnds`,
      legHalf: `${half}LegHalf`,
      legAt: `${half}LegAt`,
      legDeep: `${half}LegDeep`,
      hemX: `${half}HemX`,
      hemTurn: `${half}HemTurn`,
      centreLong: `${half}Long`,
      chinGap: half === 'belly' ? chinOf : null,
      past: open ? ({ wearer }: Pick<Look, 'wearer'>) => PAST_CENTRE_MM[wearer.scale] : null,
    },
    roles: (choices) => ({
      'neck-end': 'neckline',
      chin: 'neckline',
      neckline: 'seam',
      'fore-side': 'seam',
      leg: choices.coatLegs === 'turned' ? 'hem' : 'seam',
      'hind-side': 'seam',
      hem: hemRole(choices),
      'hem-end': hemRole(choices),
      centre: open ? 'closure' : 'fold',
    }),
    ...(half === 'back' ? { back: true as const } : {}),
    when: (choices) => opensAt(half)(choices) === open,
  });

/** Round both holes' edges once: the fit of a leg. */
export const legHole = ({ length }: Pick<Look<CoatNames>, 'length'>) =>
  length('coat-back.leg') + length('coat-belly.leg');

/** A neck edge that leans more than this at the corner, radians (40°), ends in a point there: it is drawn, and said (common practice, no source). */
const STEEP_CORNER = 0.7;

/** Back and belly of a coat, sewn together before and behind the front legs; it opens along one of its folds. */
export const barrelPart = part<Takes, BarrelGives>({
  sizes: [barrelSizes],
  passages: [{ measure: 'foot-girth', through: 'leg-hole', drawn: legHole }],
  pieces: halves.flatMap((half) => [row(half, false), row(half, true)]),
  seams: [
    ...(['fore-side', 'hind-side'] as const).map((edge) => ({
      name: edge,
      sewn: 2 as const,
      first: [{ piece: 'coat-back', edge } as const],
      second: [{ piece: 'coat-belly', edge } as const],
    })),
    {
      name: 'hem',
      sewn: 2,
      kind: 'folded',
      first: ({ closes }) => [
        ...(closes === 'belly' ? [{ piece: 'coat-belly', edge: 'hem-end', back: true } as const] : []),
        { piece: 'coat-belly', edge: 'hem', back: true },
        { piece: 'coat-back', edge: 'hem' },
        ...(closes === 'back' ? [{ piece: 'coat-back', edge: 'hem-end' } as const] : []),
      ],
      second: [],
    },
    ...halves.map((half) => ({
      name: `${half}-closure`,
      sewn: 2 as const,
      kind: 'folded' as const,
      first: (choices: Coats) => [
        { piece: `coat-${half}`, edge: 'centre' } as const,
        ...(neckEndBound(choices) ? [] : [{ piece: `coat-${half}`, edge: 'neck-end' } as const]),
      ],
      second: [],
      when: opensAt(half),
    })),
  ],
  notes: [
    scrapNeck,
    {
      code: 'coat-corner-steep',
      measures: ['neck-girth', 'neck-to-leg', 'nape-to-leg'],
      told: ({ sizes: { neck, chest, bellyNeckEnds } }) =>
        Math.abs(bellyNeckEnds) > STEEP_CORNER ? { neck, chest } : null,
    },
    {
      code: 'coat-neck-raised',
      measures: ['neck-to-leg', 'nape-to-leg'],
      told: ({ wearer }) => {
        const [throat, nape] = [wearer.of('neck-to-leg'), wearer.of('nape-to-leg')];
        return throat > nape * RAISED_NECK ? { throat, nape } : null;
      },
    },
    {
      code: 'leg-holes-for-feet',
      measures: ['foot-girth', 'front-leg-girth'],
      told: (look) => {
        const [hole, leg] = [legHole(look), look.wearer.of('front-leg-girth')];
        return hole > leg * WIDE_HOLE + WIDE_HOLE_MM ? { hole, leg } : null;
      },
    },
  ],
  fit: [
    {
      place: 'neck',
      measure: 'neck-girth',
      garment: (look) => 2 * halfNeck(look),
    },
    { place: 'chest', measure: 'chest-girth', garment: ({ sizes }) => 2 * (sizes.backLegHalf + sizes.bellyLegHalf) },
    { place: 'coat-hem', measure: 'belly-girth', garment: ({ sizes }) => 2 * (sizes.backHemX + sizes.bellyHemX) },
    { place: 'leg-hole', measure: 'front-leg-girth', garment: legHole },
  ],
  notions: halves.map((half) => ({
    kind: 'closure' as const,
    place: `${half}-closure`,
    length: ({ length }: Pick<Look<CoatNames>, 'length'>) => length(`coat-${half}.centre`),
    when: opensAt(half),
  })),
});

/** A neck that has so many times as far to the legs in front as behind is held high: there a coat cut for a level back pulls (simulated sewing: strains of a tenth). */
const RAISED_NECK = 1.25;
/** A hole this much wider than the leg is said: the foot asked for it (shares and mm; common practice, no source). */
const WIDE_HOLE = 1.25;
const WIDE_HOLE_MM = 10;
