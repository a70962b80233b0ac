import type { Mm } from '../../body';
import { vest as vestBlock } from '../blocks/vest';
import { vestHead } from '../heads/vest';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { LEAST_LIMB_EASE_MM } from '../sizes/ease';
import { maker, type SizesOf } from '../sizes/maker';

/** Armholes are ovals so wide for their height, and this many heights round (Ramanujan's ellipse, to 0.1 %). */
const OVAL = 0.55;
const OVAL_ROUND = 2.492;
/** Above the armholes a collar stands, of this share of the width across; the fronts lap by this share of the chest (no source). */
const COLLAR = 0.22;
const LEAST_COLLAR_MM = 12;
const LAPS = 0.14;
/** Between the armhole and any edge at least so much is left, mm: less would tear. */
const LEAST_LEFT_MM = 10;

/** One piece round the body, its armholes as far apart as the shoulders are across. */
const vestSizes = maker(
  [],
  ['chest', 'vestHalf', 'vestHigh', 'vestAbove', 'vestAcross', 'vestHole', 'vestHoleWide', 'vestHoleRound'],
  (wearer) => {
    const chest = wearer.girth('chest-girth', 0);
    const round: Mm = Math.max(
      wearer.girth('upper-arm-girth', 0, LEAST_LIMB_EASE_MM),
      wearer.of('paw-girth') + LEAST_LIMB_EASE_MM,
    );
    const hole = round / OVAL_ROUND;
    const wide = hole * OVAL;
    const across = Math.max(wearer.of('across-shoulders') / 2, wide / 2 + LEAST_LEFT_MM);
    const above = Math.max(2 * across * COLLAR, LEAST_COLLAR_MM);
    return {
      sizes: {
        chest,
        vestAcross: across,
        vestHole: hole,
        vestHoleWide: wide,
        vestHoleRound: round,
        vestAbove: above,
        vestHigh: above + hole + Math.max(wearer.of('side-length'), LEAST_LEFT_MM),
        vestHalf: Math.max(chest / 2 + LAPS * chest, across + wide / 2 + LEAST_LEFT_MM),
      },
    };
  },
);

type Gives = { readonly size: SizesOf<typeof vestSizes>; readonly edge: EdgesOf<'vest', typeof vestBlock> };
type Names = Gives & { readonly choices: object };

export const vest = assemble(vestHead, [
  part<{ choices: object; size: never; edge: never }, Gives>({
    sizes: [vestSizes],
    passages: [{ measure: 'paw-girth', through: 'armhole', gives: ({ vestHoleRound }) => vestHoleRound }],
    pieces: [
      piece<Names>()('vest', vestBlock, {
        copies: 1,
        mirrored: false,
        onFold: true,
        roles: () => ({ top: 'edge', front: 'edge', bottom: 'edge', centre: 'fold' }),
        cuts: ['armhole'],
        back: true,
      }),
    ],
    notes: [
      {
        code: 'cut-from-felt',
        measures: [],
        told: ({ wearer }) => (wearer.cloth.frays ? { thickness: wearer.cloth.thickness } : null),
      },
    ],
    fit: [
      { place: 'chest', measure: 'chest-girth', garment: ({ sizes }) => sizes.chest },
      { place: 'armhole', measure: 'upper-arm-girth', garment: ({ sizes }) => sizes.vestHoleRound },
    ],
  }),
]);
