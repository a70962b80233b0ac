import { bodice } from '../../blocks/bodice';
import { isOpen } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { bagged, gapSide, isShut, shouldersLast, turnGap } from './bag';
import { bodiceFeed } from './bodice-feed';
import type { BodiceGives } from './bodice-names';
import { dartSeams } from './dart';
import { type NeckEdge, type Side, type Sides, type Top, type TopChoices, wholeHalfNeckline } from './top';
import { twin } from './twin';

const sides = ['front', 'back'] as const;

type Gives = {
  readonly size: never;
  readonly edge:
    | EdgesOf<'front-lining' | 'back-lining', ReturnType<typeof bodice>>
    | 'sleeve-lining.neck-front'
    | 'sleeve-lining.neck-back';
};
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
type Ref = RefTo<Sides>;

/** Cut as the shell is, but for its pocket. */
function row<C extends TopChoices>(top: Top<C>, side: Side, open: boolean) {
  return piece<Names<C>>()(`${side}-lining`, bodice('set-in'), {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: { ...bodiceFeed(top, side, open), turnGap: turnGap(top, side) },
    roles: () => ({ gap: 'seam', 'hem-end': top.waisted ? 'opening' : 'seam', centre: open ? 'seam' : 'fold' }),
    cuts: ['slit'],
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isOpen(side)(choices) === open && (top.arm(choices) === 'set-in' || top.arm(choices) === 'bare'),
  });
}

const armholes = (): Ref[] => [
  { piece: 'front', edge: 'armhole', back: true },
  { piece: 'back', edge: 'armhole' },
];

const own = (name: string, edge: 'shoulder' | 'side') =>
  ({
    name,
    sewn: 2,
    first: [{ piece: 'back-lining', edge }],
    second: [{ piece: 'front-lining', edge }],
  }) as const;

/** Sewn while the shoulders are open: front and back are lined each by itself. */
export const LINED_FLAT = [
  ...sides.flatMap((side) => [`lining-${side}-neck`, `lining-${side}-armhole`]),
  'lining-slit',
];

/**
 * A full lining: sewn to the shell round neck and opening, round armholes without sleeves, and at the hem or waist. Closed before
 * and behind it is turned while its shoulders are open, and they are sewn last.
 */
export function liningPart<C extends TopChoices>(top: Top<C>) {
  const isBagged = bagged(top);
  const bare = (choices: C) => top.arm(choices) === 'bare';
  const flat = shouldersLast(top);
  const round = (choices: C) => !flat(choices);
  /** The lower edge from the front's opening, or its fold, to the back's. */
  const hems = (choices: C): Ref[] => {
    const end = (side: Side, back?: true): Ref[] =>
      isOpen(side)(choices) ? [{ piece: side, edge: 'hem-end', ...(back ? { back } : {}) }] : [];
    return [
      ...end('front', true),
      { piece: 'front', edge: 'hem', back: true },
      { piece: 'back', edge: 'hem' },
      ...end('back'),
    ];
  };
  return only(
    top.lined,
    part<Takes<C>, Gives>({
      pieces: sides.flatMap((side) => [row(top, side, false), row(top, side, true)]),
      seams: [
        ...dartSeams<`${Side}-lining`>(
          (side) => `lining-${side}`,
          (side) => `${side}-lining`,
        ),
        { ...own('lining-shoulder', 'shoulder'), when: round },
        { ...own('lining-shoulder', 'shoulder'), kind: 'laid', after: () => ['shoulder'], when: flat },
        twin<C, NeckEdge>('lining-neck', wholeHalfNeckline(top), { when: round }),
        ...sides.flatMap((side) => [
          twin<C, Sides>(`lining-${side}-neck`, () => [{ piece: side, edge: 'neckline' }], { when: flat }),
          twin<C, Sides>(`lining-${side}-armhole`, () => [{ piece: side, edge: 'armhole' }], {
            from: `lining-${side}-neck`,
            when: flat,
          }),
        ]),
        ...sides.map((side) =>
          twin<C, Sides>(`lining-${side}`, () => [{ piece: side, edge: 'centre' }], {
            from: 'lining-neck',
            when: isOpen(side),
          }),
        ),
        twin<C, Sides>('lining-slit', () => [{ piece: top.slit, edge: 'slit', times: 2 }], {
          sewn: 1,
          kind: 'laid',
          // Cut and turned once the neck above it is sewn.
          after: (choices) => [flat(choices) ? `lining-${top.slit}-neck` : 'lining-neck'],
          when: (choices) => choices.opening === 'slit',
        }),
        twin<C, Sides>('lining-armhole', armholes, { when: (choices) => bare(choices) && round(choices) }),
        ...[false, true].map((runsOn) => ({
          ...own('lining-side', 'side'),
          longer: 'gathered' as const,
          ...(runsOn ? { from: 'side' } : {}),
          when: (choices: C) => bare(choices) === runsOn,
        })),
        twin<C, Sides>('lining-hem', hems, { when: isBagged }),
        twin<C, Sides>('lining-gap', (choices) => [{ piece: gapSide(choices), edge: 'gap' }], {
          kind: 'laid',
          when: isShut(top),
        }),
        twin<C, Sides>('lining-hem', hems, { kind: 'laid', when: (choices) => !isBagged(choices) }),
        twin<C, Sides>('lining-armhole', armholes, { kind: 'laid', when: (choices) => !bare(choices) }),
      ],
    }),
  );
}
