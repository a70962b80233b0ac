import type { Mm } from '../../body';
import { flare } from '../blocks/flare';
import { bowTieHead } from '../heads/bow-tie';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { easedNeck } from '../sizes/ease';
import { maker, type SizesOf } from '../sizes/maker';
import { PAST_CENTRE_MM } from '../sizes/scale';
import { fastenedPart } from './parts/fastened';
import { scrapNeck } from './parts/thick';

/**
 * A bow is this share of the neck wide and half of that deep, but no deeper than looks like one; and never too narrow to be
 * turned out, in thick cloth less still (common practice, no source).
 */
const BOW = { share: 0.34, most: 170 } as const;
const DEEP_SHARE = 0.5;
const TURNS_MM = 15;
const TURNS_THICK = 4;
/** Where the ends of the folded bow lap behind, under the knot. */
const BOW_LAPS_MM = 10;
/** The knot goes round the pinched bow, a little over half as deep as it lies flat; it is so wide for the bow (common practice, no source). */
const PINCHED = 0.55;
const KNOT_SHARE = 0.3;
/** The band is this share of the neck wide, and never too narrow to be folded. */
const BAND_SHARE = 0.045;
const NARROWEST_MM = 10;

/** All of it from the neck: the bow's tube, the knot round it, the band that both sit on. */
const bowSizes = maker(
  [],
  ['neck', 'bowDeep', 'bowRound', 'knotWide', 'knotRound', 'neckBand', 'neckBandWide'],
  (wearer) => {
    const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
    const turns = TURNS_MM + TURNS_THICK * wearer.cloth.thickness;
    const wide: Mm = Math.min(Math.max(neck * BOW.share, turns / DEEP_SHARE), BOW.most);
    const deep = wide * DEEP_SHARE;
    return {
      sizes: {
        neck,
        bowDeep: deep,
        bowRound: 2 * wide + BOW_LAPS_MM,
        knotWide: Math.max(deep * KNOT_SHARE, NARROWEST_MM),
        knotRound: 2 * deep * PINCHED + Math.PI * 4 * wearer.cloth.thickness,
        neckBand: neck + 2 * PAST_CENTRE_MM[wearer.scale],
        neckBandWide: Math.max(neck * BAND_SHARE, NARROWEST_MM),
      },
    };
  },
);

type Gives = {
  readonly size: SizesOf<typeof bowSizes>;
  readonly edge: EdgesOf<'bow' | 'knot' | 'neck-band', typeof flare>;
};
type Names = Gives & { readonly choices: object };

/** A strip on the fold, its long edges folded in. */
const folded = { top: 'opening', bottom: 'opening', centre: 'fold' } as const;
const strip = { copies: 1, mirrored: false, onFold: true } as const;
const longEdges = <P extends 'knot' | 'neck-band'>(on: P) =>
  ({
    name: `${on}-long`,
    sewn: 2,
    kind: 'folded',
    first: [
      { piece: on, edge: 'top' },
      { piece: on, edge: 'bottom' },
    ],
    second: [],
  }) as const;

export const bowTie = assemble(bowTieHead, [
  fastenedPart,
  part<{ choices: object; size: never; edge: never }, Gives>({
    sizes: [bowSizes],
    pieces: [
      piece<Names>()('bow', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: { flareTop: 'bowDeep', flareBottom: 'bowDeep', flareHeight: 'bowRound' },
        roles: () => ({ top: 'edge', side: 'seam', bottom: 'edge', centre: 'fold' }),
      }),
      piece<Names>()('knot', flare, {
        ...strip,
        sizes: {
          flareTop: ({ sizes }) => sizes.knotRound / 2,
          flareBottom: ({ sizes }) => sizes.knotRound / 2,
          flareHeight: 'knotWide',
        },
        roles: () => ({ ...folded, side: 'seam' }),
      }),
      piece<Names>()('neck-band', flare, {
        ...strip,
        sizes: {
          flareTop: ({ sizes }) => sizes.neckBand / 2,
          flareBottom: ({ sizes }) => sizes.neckBand / 2,
          flareHeight: 'neckBandWide',
        },
        roles: () => ({ ...folded, side: 'opening' }),
      }),
    ],
    seams: [
      {
        name: 'bow-long',
        sewn: 1,
        first: [{ piece: 'bow', edge: 'side' }],
        second: [{ piece: 'bow', edge: 'side' }],
      },
      {
        // Turned out, folded so that its ends lap in the middle behind.
        name: 'bow-ends',
        sewn: 2,
        kind: 'laid',
        after: () => ['bow-long'],
        first: [{ piece: 'bow', edge: 'top' }],
        second: [{ piece: 'bow', edge: 'bottom', back: true }],
      },
      longEdges('neck-band'),
      { name: 'neck-band-end', sewn: 2, kind: 'folded', first: [{ piece: 'neck-band', edge: 'side' }], second: [] },
      longEdges('knot'),
      {
        name: 'knot-end',
        sewn: 1,
        after: () => ['bow-ends', 'neck-band-end', 'knot-long'],
        first: [{ piece: 'knot', edge: 'side' }],
        second: [{ piece: 'knot', edge: 'side' }],
      },
    ],
    notes: [scrapNeck, { code: 'bow-pinched', measures: [], told: ({ sizes }) => ({ round: sizes.knotRound }) }],
    fit: [
      {
        place: 'neck',
        measure: 'neck-girth',
        garment: ({ length, wearer }) => 2 * length('neck-band.top') - 2 * PAST_CENTRE_MM[wearer.scale],
      },
    ],
    notions: [{ kind: 'closure', place: 'neck-band-end', length: ({ sizes }) => sizes.neckBandWide }],
  }),
]);
