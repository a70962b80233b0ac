import type { ByScale } from '../../../body';
import { collar } from '../../blocks/collar';
import { flare } from '../../blocks/flare';
import type { Opens } from '../../heads/choices';
import { sumOf } from '../../rows/names';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { BANDS_FROM, bandShare } from '../../sizes/band';
import { isKnit } from '../../sizes/cloths';
import { isCutAslant } from './binding';
import type { BodiceGives } from './bodice';
import { fromFront } from './strip';
import { halfNeckline, type Side, type Top, type TopChoices } from './top';

export const isClosed = ({ opening }: Opens) => opening === 'none';
/** Where a slit lies, and so where the ends of a collar or strip do. */
export type Ends = (choices: Opens) => Side;

/** A standing band is this share of the neck high, folded double; a flat collar this share wide (common practice). */
const BAND_SHARE = 0.06;
const FLAT_SHARE = 0.13;
const NARROWEST_MM = 8;
/** How far front and back overlap at the end of the shoulder where a flat collar is traced (common practice, no source). */
const OVERLAP_MM: ByScale = { small: 5, usual: 6, large: 8 };
/** How wide the bias facing inside a collar shows. */
const COLLAR_FACING_MM: ByScale = { small: 6, usual: 8, large: 10 };

type Names<C extends object> = { readonly choices: C } & BodiceGives;
type Edges<P extends string> = EdgesOf<P, typeof flare>;

const self = <P extends string, E extends string>(piece: P, edge: E) => ({
  first: [{ piece, edge }],
  second: [{ piece, edge }],
});

/** A standing band, folded double; of knit it is shorter than its edge and stretched to it. */
export function standingPart<C extends TopChoices>(top: Top<C>, ends: Ends) {
  const neckline = halfNeckline(top);
  return part<Names<C>, { size: never; edge: Edges<'collar-band'> }>({
    pieces: [
      piece<Names<C>>()('collar-band', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: (look) => sumOf(neckline(look.choices), look) * bandShare(look.wearer.cloth),
          flareBottom: (look) => sumOf(neckline(look.choices), look) * bandShare(look.wearer.cloth),
          flareHeight: ({ sizes }) => 2 * Math.max(sizes.neck * BAND_SHARE, NARROWEST_MM),
        },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      { name: 'collar-end', sewn: 1, ...self('collar-band', 'side'), when: isClosed },
      {
        name: 'collar-end',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'collar-band', edge: 'side' }],
        second: [],
        when: (choices) => !isClosed(choices),
      },
      {
        name: 'collar-neck',
        sewn: 2,
        first: neckline,
        second: (choices) => [fromFront('collar-band', 'top', ends(choices))],
        longer: 'stretched',
        cornered: true,
      },
      {
        name: 'collar-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'collar-band', edge: 'top' }],
        second: [{ piece: 'collar-band', edge: 'bottom' }],
      },
    ],
    notes: [
      {
        code: 'band-of-rib',
        measures: [],
        told: ({ wearer: { cloth } }) =>
          isKnit(cloth) && cloth.stretch < BANDS_FROM ? { stretch: cloth.stretch * 100 } : null,
      },
    ],
  });
}

/** A flat collar in two halves, each of two layers, caught between the neck and a narrow facing on the bias. */
export function flatPart<C extends TopChoices>(top: Top<C>, ends: Ends) {
  const neckline = halfNeckline(top);
  const wide = ({ sizes }: { readonly sizes: { readonly neck: number } }) =>
    Math.max(sizes.neck * FLAT_SHARE, 2 * NARROWEST_MM);
  return part<Names<C>, { size: never; edge: EdgesOf<'collar', typeof collar> | Edges<'collar-facing'> }>({
    pieces: [
      piece<Names<C>>()('collar', collar, {
        copies: 4,
        mirrored: true,
        onFold: false,
        sizes: {
          overlap: (look) => OVERLAP_MM[look.wearer.scale] / Math.max(look.sizes.shoulder, wide(look)),
          collarNeck: (look) => sumOf(neckline(look.choices), look),
          collarWidth: wide,
        },
        roles: () => ({ neck: 'seam', round: 'seam', end: 'seam' }),
      }),
      piece<Names<C>>()('collar-facing', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        bias: isCutAslant,
        sizes: {
          flareTop: (look) => sumOf(neckline(look.choices), look),
          flareBottom: (look) => sumOf(neckline(look.choices), look),
          flareHeight: ({ wearer }) => COLLAR_FACING_MM[wearer.scale],
        },
        roles: (choices) => ({
          top: 'seam',
          side: isClosed(choices) ? 'seam' : 'opening',
          bottom: 'seam',
          centre: 'fold',
        }),
      }),
    ],
    seams: [
      { name: 'collar-round', sewn: 2, ...self('collar', 'round') },
      { name: 'collar-end', sewn: 2, ...self('collar', 'end'), from: 'collar-round', cornered: true },
      {
        name: 'collar-neck',
        sewn: 2,
        first: neckline,
        second: [{ piece: 'collar', edge: 'neck' }],
        after: () => ['collar-round'],
        cornered: true,
      },
      { name: 'collar-facing-end', sewn: 1, ...self('collar-facing', 'side'), when: isClosed },
      {
        name: 'collar-facing-end',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'collar-facing', edge: 'side' }],
        second: [],
        when: (choices) => !isClosed(choices),
      },
      {
        name: 'collar-facing',
        sewn: 2,
        first: neckline,
        second: (choices) => [fromFront('collar-facing', 'top', ends(choices))],
        cornered: true,
        after: () => ['collar-neck'],
      },
      {
        name: 'collar-facing-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'collar-facing', edge: 'top' }],
        second: [{ piece: 'collar-facing', edge: 'bottom', back: true }],
      },
    ],
  });
}
