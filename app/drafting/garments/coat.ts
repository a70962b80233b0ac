import type { Mm } from '../../body';
import { coat as coatBlock } from '../blocks/coat';
import { pillow } from '../blocks/pillow';
import { BIB_REACH } from '../curves/shares';
import { coatHead } from '../heads/coat';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { easedNeck } from '../sizes/ease';
import { maker, type SizesOf } from '../sizes/maker';
import { fastenedPart } from './parts/fastened';
import { scrapNeck } from './parts/thick';

/** Tabs lap by a quarter of the chest: 4 in on 16 in (common practice, no source). */
const LAPS = 1 / 4;
/** A tab is this wide for the chest, the coat reaches down so much of it on either side (common practice, no source). */
const TAB = { share: 0.14, least: 16 } as const;
const SIDE_SHARE = 0.31;
/** The band under the belly: how wide for the coat's length, and how far it lies under either side. */
const BAND = { share: 0.22, least: 20, most: 60 } as const;
const UNDER_SIDE = { share: 0.08, least: 15, most: 35 } as const;
/** No neck is cut tighter than this radius: there must be room for its allowance. */
const TIGHTEST_MM = 12;
/** Shorter than so many half widths the back could not be rounded. */
const SHORTEST = 0.8;

const within = (value: Mm, { least, most }: { readonly least: Mm; readonly most: Mm }): Mm =>
  Math.min(Math.max(value, least), most);

/** Three measures make it: the rest follows in proportion. */
const coatSizes = maker(
  [],
  ['neck', 'chest', 'coatNeck', 'coatTab', 'coatHalf', 'coatLong', 'bandHalf', 'bandWide', 'bandUnder'],
  (wearer) => {
    const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
    const chest = wearer.girth('chest-girth', 0);
    const coatNeck = Math.max(neck / 2 + (wearer.of('chest-girth') * LAPS) / 2, TIGHTEST_MM * BIB_REACH);
    const coatTab = Math.max(chest * TAB.share, TAB.least);
    const coatHalf = Math.max(chest * SIDE_SHARE, coatNeck / BIB_REACH + coatTab);
    const coatLong = Math.max(wearer.of('back-length'), SHORTEST * coatHalf);
    const under = within(chest * UNDER_SIDE.share, UNDER_SIDE);
    // No wider than it is long on either side, so that it goes no farther round than the chest.
    const aside = Math.max(chest / 2 - coatHalf, BAND.least);
    const bandWide = Math.min(within(coatLong * BAND.share, BAND), aside);
    return {
      sizes: {
        neck,
        chest,
        coatNeck,
        coatTab,
        coatHalf,
        coatLong,
        bandUnder: under,
        bandWide,
        bandHalf: aside + under,
      },
    };
  },
);

type Gives = {
  readonly size: SizesOf<typeof coatSizes>;
  readonly edge: EdgesOf<'coat', typeof coatBlock> | EdgesOf<'belly-band', typeof pillow>;
};
type Names = Gives & { readonly choices: object };

const layers = { copies: 2, mirrored: false, onFold: true } as const;
const self = <P extends 'coat' | 'belly-band', E extends string>(on: P, edge: E) =>
  ({ first: [{ piece: on, edge }], second: [{ piece: on, edge }] }) as const;

export const coat = assemble(coatHead, [
  fastenedPart,
  part<{ choices: object; size: never; edge: never }, Gives>({
    sizes: [coatSizes],
    pieces: [
      piece<Names>()('coat', coatBlock, {
        ...layers,
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', gap: 'seam', centre: 'fold' }),
        back: true,
      }),
      piece<Names>()('belly-band', pillow, {
        ...layers,
        sizes: { pillowHalf: 'bandHalf', pillowDeep: 'bandWide' },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', gap: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      { name: 'coat-neck', sewn: 2, ...self('coat', 'top') },
      { name: 'coat-round', sewn: 2, ...self('coat', 'bottom') },
      { name: 'coat-tab', sewn: 2, ...self('coat', 'side'), cornered: true },
      { name: 'coat-gap', sewn: 2, kind: 'laid', ...self('coat', 'gap') },
      { name: 'band-top', sewn: 2, ...self('belly-band', 'top') },
      { name: 'band-end', sewn: 2, ...self('belly-band', 'side') },
      { name: 'band-bottom', sewn: 2, ...self('belly-band', 'bottom') },
      { name: 'band-gap', sewn: 2, kind: 'laid', ...self('belly-band', 'gap') },
    ],
    notes: [scrapNeck],
    fit: [
      {
        place: 'neck',
        measure: 'neck-girth',
        garment: ({ length, wearer }) => 2 * length('coat.top') - wearer.of('chest-girth') * LAPS,
      },
      {
        place: 'chest',
        measure: 'chest-girth',
        garment: ({ sizes }) => 2 * (sizes.coatHalf + sizes.bandHalf - sizes.bandUnder),
      },
    ],
    notions: [
      { kind: 'closure', place: 'coat-tab', length: ({ sizes }) => sizes.coatTab },
      { kind: 'closure', place: 'band-end', count: 2, length: ({ sizes }) => sizes.bandWide },
    ],
  }),
]);
