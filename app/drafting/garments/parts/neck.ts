import { flare } from '../../blocks/flare';
import { neckFacing } from '../../blocks/neck-facing';
import { isOpen, type Necks, type Opens } from '../../heads/choices';
import { sumOf } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { bindingPart, fromFront } from './binding';
import type { BodiceGives } from './bodice';
import { liningPart } from './lining';
import { halfNeckline, type Side, type Top, type TopChoices, wholeHalfNeckline } from './top';

const finished = (way: Necks['neck']) => (choices: Necks) => choices.neck === way;
const isClosed = ({ opening }: Opens) => opening === 'none';
/** Where a slit lies, and so where the ends of a collar or strip do. */
type Ends = (choices: Opens) => Side;
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

type Takes<C extends object> = {
  readonly choices: C;
  readonly size: BodiceGives['size'];
  readonly edge: BodiceGives['edge'];
};
type With<C extends object, E extends string> = {
  readonly choices: C;
  readonly size: Takes<C>['size'];
  readonly edge: Takes<C>['edge'] | E;
};
type Edges<P extends string> = EdgesOf<P, typeof flare>;
type Facings = EdgesOf<'front-facing' | 'back-facing', typeof neckFacing>;

const self = <P extends string, E extends string>(piece: P, edge: E) => ({
  first: [{ piece, edge }],
  second: [{ piece, edge }],
});

function bandPart<C extends TopChoices>(top: Top<C>, ends: Ends) {
  const neckline = halfNeckline(top);
  return part<Takes<C>, { size: never; edge: Edges<'collar-band'> }>({
    pieces: [
      piece<With<C, never>>()('collar-band', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: (look) => sumOf(neckline(look.choices), look),
          flareBottom: (look) => sumOf(neckline(look.choices), look),
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
}

function flatPart<C extends TopChoices>(top: Top<C>, ends: Ends) {
  const neckline = halfNeckline(top);
  const wide = (neck: number) => Math.max(neck * FLAT_SHARE, 2 * NARROWEST_MM);
  return part<Takes<C>, { size: never; edge: Edges<'collar'> }>({
    pieces: [
      piece<With<C, never>>()('collar', flare, {
        copies: 2,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: (look) => sumOf(neckline(look.choices), look),
          flareBottom: (look) => sumOf(neckline(look.choices), look) + FLAT_ANGLE * wide(look.sizes.neck),
          flareHeight: ({ sizes }) => wide(sizes.neck),
        },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      { name: 'collar-round', sewn: 2, ...self('collar', 'bottom') },
      { name: 'collar-end', sewn: 2, ...self('collar', 'side'), cornered: true },
      {
        name: 'collar-neck',
        sewn: 2,
        first: neckline,
        second: (choices) => [fromFront('collar', 'top', ends(choices))],
        cornered: true,
      },
    ],
  });
}

function facedPart<C extends TopChoices>(top: Top<C>) {
  return part<Takes<C>, { size: never; edge: Facings }>({
    pieces: (['front', 'back'] as const).flatMap((side) =>
      [false, true].map((open) =>
        piece<With<C, Facings>>()(`${side}-facing`, neckFacing, {
          copies: open ? 2 : 1,
          mirrored: open,
          onFold: !open,
          sizes: {
            neckDrop: `${side}NeckDrop` as const,
            slitLength: side === top.slit && !open ? (look) => look.slit : null,
          },
          cuts: ['slit'],
          roles: () => ({ neckline: 'seam', shoulder: 'seam', outer: 'edge', centre: open ? 'opening' : 'fold' }),
          ...(side === 'back' ? { back: true as const } : {}),
          when: (choices) => isOpen(side)(choices) === open,
        }),
      ),
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
        first: halfNeckline(top),
        second: [
          { piece: 'front-facing', edge: 'neckline' },
          { piece: 'back-facing', edge: 'neckline', back: true },
        ],
        cornered: true,
      },
      ...(['front', 'back'] as const).map((side) => ({
        name: `facing-${side}-end`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: `${side}-facing`, edge: 'centre' } as const],
        second: [],
        when: isOpen(side),
      })),
      {
        name: 'slit',
        sewn: 1,
        kind: 'laid',
        first: [{ piece: top.slit, edge: 'slit', times: 2 }],
        second: [{ piece: `${top.slit}-facing`, edge: 'slit', times: 2 }],
        when: (choices) => choices.opening === 'slit',
      },
    ],
  });
}

/** A bound, faced, lined or collared neckline. A raglan's is bound where another was asked for inside: its neck has four pieces. */
export function neckParts<C extends TopChoices & Necks>(top: Top<C>) {
  const { slit, arm } = top;
  return [
    only(
      finished('bound'),
      bindingPart('binding', {
        edge: wholeHalfNeckline(top),
        closed: isClosed,
        ends: endsAt(slit),
        hollow: () => true,
      }),
    ),
    only(finished('faced'), facedPart(top)),
    liningPart(top),
    only(finished('band'), bandPart(top, endsAt(slit))),
    only(finished('flat'), flatPart(top, flatEndsAt(slit))),
    part<{ choices: Necks; size: 'shoulder'; edge: never }>({
      instead: (['faced', 'lined'] as const).map((from) => ({
        choice: 'neck',
        from,
        to: 'bound',
        code: 'bound-instead',
        check: [],
        when: ({ choices, sizes }) =>
          // Every part beside this one asks for the top's own choices too.
          arm(choices as C) === 'raglan' || (from === 'faced' && sizes.shoulder < NARROWEST_FACING_MM),
      })),
    }),
  ] as const;
}
