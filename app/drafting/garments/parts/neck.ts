import { flare } from '../../blocks/flare';
import { neckFacing } from '../../blocks/neck-facing';
import { type Choice, only, type Part, sumOf } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
import { bindingPart, fromFront } from './binding';
import { halfNeckline, isOpen, isRaglan, wholeHalfNeckline } from './bodice';
import { liningPart } from './lining';

/** How a neckline is finished: concave, so never simply turned. */
export const neckChoice = {
  kind: 'one',
  of: ['bound', 'faced', 'lined', 'band', 'flat'],
  fallback: 'bound',
} as const satisfies Choice;

const finished = (way: string) => (choices: Choices) => choices.neck === way;
const isClosed = (choices: Choices) => choices.opening === 'none' || choices.opening === undefined;
/** Where a slit lies, and so where the ends of a collar or strip do. */
type Side = 'front' | 'back';
type Ends = (choices: Choices) => Side;
const endsAt =
  (slit: Side): Ends =>
  ({ opening }) =>
    opening === 'front' || (opening === 'slit' && slit === 'front') ? 'front' : 'back';
/** A flat collar meets in front where nothing opens behind. */
const flatEndsAt =
  (slit: Side): Ends =>
  (choices) =>
    isClosed(choices) ? 'front' : endsAt(slit)(choices);

/** A standing band is this share of the neck high, folded double; a flat collar this share wide (common practice). */
const BAND_SHARE = 0.06;
const FLAT_SHARE = 0.13;
const NARROWEST_MM = 8;
/** A facing lies under the shoulder: narrower than this it will not stay inside (common practice, no source). */
const NARROWEST_FACING_MM = 12;
/** How far a flat collar turns, half of it, radians: nearly as far as the neckline itself, so that it lies flat. */
const FLAT_ANGLE = 2;

const self = (piece: string, edge: string) => ({ first: [{ piece, edge }], second: [{ piece, edge }] });

const bandPart = (ends: Ends): Part => ({
  pieces: [
    {
      name: 'collar-band',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: flare,
      sizes: { flareTop: 'collarHalf', flareBottom: 'collarHalf', flareHeight: 'collarDeep', flareOpen: 'notOpen' },
      takes: (look) => ({
        collarHalf: sumOf(halfNeckline(look.choices), look),
        collarDeep: 2 * Math.max((look.sizes.neck ?? 0) * BAND_SHARE, NARROWEST_MM),
      }),
      roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
    },
  ],
  seams: [
    { name: 'collar-end', sewn: 1, ...self('collar-band', 'side') },
    {
      name: 'collar-neck',
      sewn: 2,
      first: halfNeckline,
      second: (choices) => [fromFront('collar-band', ends(choices))],
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
});

const flatPart = (ends: Ends): Part => ({
  pieces: [
    {
      name: 'collar',
      copies: 2,
      mirrored: false,
      onFold: true,
      block: flare,
      sizes: { flareTop: 'collarHalf', flareBottom: 'collarOuter', flareHeight: 'collarWide', flareOpen: 'notOpen' },
      takes: (look) => {
        const collarHalf = sumOf(halfNeckline(look.choices), look);
        const collarWide = Math.max((look.sizes.neck ?? 0) * FLAT_SHARE, 2 * NARROWEST_MM);
        return { collarHalf, collarWide, collarOuter: collarHalf + FLAT_ANGLE * collarWide };
      },
      roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
    },
  ],
  seams: [
    { name: 'collar-round', sewn: 2, ...self('collar', 'bottom') },
    { name: 'collar-end', sewn: 2, ...self('collar', 'side'), cornered: true },
    {
      name: 'collar-neck',
      sewn: 2,
      first: halfNeckline,
      second: (choices) => [fromFront('collar', ends(choices))],
      cornered: true,
    },
  ],
});

const facedPart = (slit: Side): Part => ({
  pieces: (['front', 'back'] as const).flatMap((side) =>
    [false, true].map((open) => ({
      name: `${side}-facing`,
      copies: open ? 2 : 1,
      mirrored: open,
      onFold: !open,
      block: neckFacing,
      sizes: { neckDrop: `${side}NeckDrop`, slitLength: open ? 'noSlit' : `${side}Slit` },
      cuts: ['slit'],
      roles: () => ({ neckline: 'seam', shoulder: 'seam', outer: 'edge', centre: open ? 'opening' : 'fold' }) as const,
      ...(side === 'back' ? { back: true as const } : {}),
      when: (choices: Choices) => isOpen(side)(choices) === open,
    })),
  ),
  seams: [
    {
      name: 'facing-shoulder',
      sewn: 2,
      first: [{ piece: 'back-facing', edge: 'shoulder' }],
      second: [{ piece: 'front-facing', edge: 'shoulder' }],
    },
    {
      name: 'facing-neck',
      sewn: 2,
      first: halfNeckline,
      second: [
        { piece: 'front-facing', edge: 'neckline' },
        { piece: 'back-facing', edge: 'neckline', back: true },
      ],
      cornered: true,
    },
    {
      name: 'slit',
      sewn: 1,
      kind: 'laid',
      first: [{ piece: slit, edge: 'slit', times: 2 }],
      second: [{ piece: `${slit}-facing`, edge: 'slit', times: 2 }],
      when: (choices) => choices.opening === 'slit',
    },
  ],
});

/** A bound, faced, lined or collared neckline. A raglan's is bound where another was asked for inside: its neck has four pieces. */
export const neckPart = (slit: Side): readonly Part[] => [
  only(finished('bound'), bindingPart('binding', { edge: wholeHalfNeckline, closed: isClosed, ends: endsAt(slit) })),
  only(finished('faced'), facedPart(slit)),
  liningPart(slit),
  only(finished('band'), bandPart(endsAt(slit))),
  only(finished('flat'), flatPart(flatEndsAt(slit))),
  {
    instead: ['faced', 'lined'].map((from) => ({
      choice: 'neck',
      from,
      to: 'bound',
      code: 'bound-instead',
      check: [],
      when: (look) => isRaglan(look.choices) || (from === 'faced' && (look.sizes.shoulder ?? 0) < NARROWEST_FACING_MM),
    })),
  },
];
