import { inOneFacing } from '../../blocks/in-one-facing';
import { isOpen } from '../../heads/choices';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { bodiceFeed } from './bodice-feed';
import type { BodiceGives } from './bodice-names';
import { dartSeams } from './dart';
import { facingEnds } from './facing-ends';
import type { Side, Top, TopChoices } from './top';

type Gives = { readonly size: never; readonly edge: EdgesOf<'front-facing' | 'back-facing', typeof inOneFacing> };
type Takes<C extends object> = {
  readonly choices: C;
  readonly size: BodiceGives['size'];
  readonly edge: BodiceGives['edge'];
};
type Names<C extends object> = {
  readonly choices: C;
  readonly size: Takes<C>['size'];
  readonly edge: Takes<C>['edge'] | Gives['edge'];
};
const sides = ['front', 'back'] as const;

/** Sewn on while the shoulders are open: nothing has to be turned through them. */
export const FACED_FLAT = [...sides.flatMap((side) => [`facing-${side}-neck`, `facing-${side}-armhole`]), 'slit'];

function row<C extends TopChoices>(top: Top<C>, side: Side, open: boolean) {
  return piece<Names<C>>()(`${side}-facing`, inOneFacing, {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: { ...bodiceFeed(top, side, open), past: null, sideGather: 0 },
    cuts: ['slit'],
    roles: () => ({
      neckline: 'seam',
      shoulder: 'seam',
      armhole: 'seam',
      side: 'seam',
      outer: 'edge',
      centre: open ? 'opening' : 'fold',
    }),
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isOpen(side)(choices) === open,
  });
}

/**
 * Neck and armholes faced in one, for shoulders too narrow to be turned or bound on both sides: front and back are faced each by
 * itself and turned, then the shoulders are sewn, and the facing's own are closed over them by hand.
 */
export function inOneFacingPart<C extends TopChoices>(top: Top<C>) {
  return only(
    (choices: C) => top.facedInOne?.(choices) ?? false,
    part<Takes<C>, Gives>({
      pieces: sides.flatMap((side) => [row(top, side, false), row(top, side, true)]),
      seams: [
        ...dartSeams<`${Side}-facing`>(
          (side) => `facing-${side}`,
          (side) => `${side}-facing`,
        ),
        ...sides.flatMap((side) =>
          (['neckline', 'armhole'] as const).map((edge) => ({
            name: `facing-${side}-${edge === 'neckline' ? 'neck' : 'armhole'}`,
            sewn: 2 as const,
            first: [{ piece: side, edge }] as const,
            second: [{ piece: `${side}-facing`, edge }] as const,
            cornered: true as const,
            ...(edge === 'armhole' ? { from: `facing-${side}-neck` } : {}),
          })),
        ),
        {
          name: 'facing-shoulder',
          sewn: 2,
          kind: 'laid',
          first: [{ piece: 'back-facing', edge: 'shoulder' }],
          second: [{ piece: 'front-facing', edge: 'shoulder' }],
          after: () => ['shoulder'],
        },
        {
          name: 'facing-side',
          sewn: 2,
          from: 'side',
          first: [{ piece: 'back-facing', edge: 'side' }],
          second: [{ piece: 'front-facing', edge: 'side' }],
        },
        ...facingEnds,
        {
          name: 'slit',
          sewn: 1,
          kind: 'laid',
          first: [{ piece: top.slit, edge: 'slit', times: 2 }],
          second: [{ piece: `${top.slit}-facing`, edge: 'slit', times: 2 }],
          // Cut and turned once the neck above it is sewn.
          after: () => [`facing-${top.slit}-neck`],
          when: ({ opening }) => opening === 'slit',
        },
      ],
    }),
  );
}
