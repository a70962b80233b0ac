import { neckFacing } from '../../blocks/neck-facing';
import { isOpen, type Necks } from '../../heads/choices';
import type { Look } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { BINDS_UP_TO_MM, isThinWoven } from '../../sizes/cloths';
import { bindingPart } from './binding';
import type { BodiceGives } from './bodice';
import { type Ends, flatPart, isClosed, standingPart } from './collars';
import { facingEnds } from './facing-ends';
import { inOneFacingPart } from './in-one-facing';
import { liningPart } from './lining';
import { halfNeckline, type Side, type Top, type TopChoices, wholeHalfNeckline } from './top';

/** A shoulder finished narrower than this is not lined and turned: its tube would not turn out (common practice, no source). */
const NARROWEST_LINED_MM = 14;
/** What a shoulder is short of its least by rounding, mm. */
const ROUNDED_MM = 0.01;

type Looked = Look<{ choices: Necks; size: 'shoulder'; edge: never }>;
const finished = (way: Necks['neck']) => (choices: Necks) => choices.neck === way;
const endsAt =
  (slit: Side): Ends =>
  ({ opening }) =>
    opening === 'front' || (opening === 'slit' && slit === 'front') ? 'front' : 'back';

/** A facing lies under the shoulder: narrower than this it will not stay inside (common practice, no source). */
const NARROWEST_FACING_MM = 12;
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
type Facings = EdgesOf<'front-facing' | 'back-facing', typeof neckFacing>;

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
      ...facingEnds,
      {
        name: 'slit',
        sewn: 1,
        kind: 'laid',
        first: [{ piece: top.slit, edge: 'slit', times: 2 }],
        second: [{ piece: `${top.slit}-facing`, edge: 'slit', times: 2 }],
        // Cut and turned once the neck above it is sewn.
        after: () => ['facing-neck'],
        when: (choices) => choices.opening === 'slit',
      },
    ],
  });
}

/**
 * A bound, faced, lined or collared neckline. A raglan's is bound where another was asked for inside: its neck has four pieces; so
 * is one with its sleeves cut in one instead of lined.
 */
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
    inOneFacingPart(top),
    only(finished('band'), standingPart(top, endsAt(slit))),
    only(finished('flat'), flatPart(top, endsAt(slit))),
    part<{ choices: Necks; size: 'shoulder'; edge: never }>({
      instead: [
        ...(['faced', 'lined'] as const).map((from) => ({
          choice: 'neck' as const,
          from,
          to: 'bound' as const,
          code: 'bound-instead',
          check: [],
          when: ({ choices, sizes }: Looked) =>
            // Every part beside this one asks for the top's own choices too.
            arm(choices as C) === 'raglan' ||
            (from === 'lined' && arm(choices as C) === 'in-one') ||
            (from === 'faced' && sizes.shoulder < NARROWEST_FACING_MM),
        })),
        {
          choice: 'neck',
          from: 'in-one',
          to: 'bound',
          code: 'bound-instead',
          check: [],
          when: ({ choices }: Looked) => arm(choices as C) !== 'bare',
        },
        ...(['bound', 'lined'] as const).map((from) => ({
          choice: 'neck' as const,
          from,
          to: 'in-one' as const,
          code: 'faced-in-one',
          because: 'narrow-shoulder',
          check: ['shoulder-length'] as const,
          onlyAuto: true as const,
          when: ({ choices, sizes, wearer }: Looked) =>
            top.facedInOne !== undefined &&
            arm(choices as C) === 'bare' &&
            wearer.cloth.thickness <= BINDS_UP_TO_MM &&
            sizes.shoulder < NARROWEST_LINED_MM - ROUNDED_MM,
        })),
        {
          choice: 'neck',
          from: 'bound',
          to: 'lined',
          code: 'lined-usual',
          because: 'thin-cloth',
          check: [],
          onlyAuto: true,
          when: ({ choices, sizes, wearer }) =>
            arm(choices as C) === 'bare' &&
            !isClosed(choices as C) &&
            (choices as C).opening !== 'slit' &&
            isThinWoven(wearer.cloth) &&
            sizes.shoulder >= NARROWEST_LINED_MM - ROUNDED_MM,
        },
      ],
    }),
  ] as const;
}
