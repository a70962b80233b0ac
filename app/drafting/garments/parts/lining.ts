import { bodice } from '../../blocks/bodice';
import type { Ref, Role } from '../../draft-types';
import { only, type Part, type PieceRow, type SeamRow } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
import {
  bodiceFeed,
  hasSleeve,
  isBagged,
  isLined,
  isOpen,
  isRaglan,
  isWaisted,
  PAST_CENTRE_MM,
  wholeHalfNeckline,
} from './bodice';
import { twin } from './twin';

const sides = ['front', 'back'] as const;

/** Cut as the shell is, but for its pocket. */
function row(side: 'front' | 'back', open: boolean): PieceRow {
  return {
    name: `${side}-lining`,
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    block: bodice({ arm: 'set-in', centre: open ? 'open' : 'fold' }),
    sizes: { ...bodiceFeed(side, open), pocket: 'noPocket' },
    takes: () => ({ past: PAST_CENTRE_MM }),
    roles: (choices): Record<string, Role> => ({
      'hem-end': isWaisted(choices) ? 'opening' : 'seam',
      centre: open ? 'seam' : 'fold',
    }),
    cuts: ['slit'],
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isOpen(side)(choices) === open && !isRaglan(choices),
  };
}

const armholes = (): Ref[] => [
  { piece: 'front', edge: 'armhole', back: true },
  { piece: 'back', edge: 'armhole' },
];

/** The lower edge from the front's opening, or its fold, to the back's. */
function hems(choices: Choices): Ref[] {
  const end = (side: 'front' | 'back', back?: true): Ref[] =>
    isOpen(side)(choices) && !isWaisted(choices) ? [{ piece: side, edge: 'hem-end', ...(back ? { back } : {}) }] : [];
  return [
    ...end('front', true),
    { piece: 'front', edge: 'hem', back: true },
    { piece: 'back', edge: 'hem' },
    ...end('back'),
  ];
}

const own = (name: string, edge: string, more: Partial<SeamRow> = {}): SeamRow => ({
  name,
  sewn: 2,
  first: [{ piece: 'back-lining', edge }],
  second: [{ piece: 'front-lining', edge }],
  ...more,
});

/** A full lining: sewn to the shell round neck and opening, round armholes without sleeves, and at the hem or waist. */
export const liningPart = (slit: 'front' | 'back'): Part =>
  only(isLined, {
    pieces: sides.flatMap((side) => [row(side, false), row(side, true)]),
    seams: [
      own('lining-shoulder', 'shoulder'),
      twin('lining-neck', wholeHalfNeckline),
      ...sides.map((side) => twin(`lining-${side}`, () => [{ piece: side, edge: 'centre' }], { when: isOpen(side) })),
      twin('lining-slit', () => [{ piece: slit, edge: 'slit', times: 2 }], {
        sewn: 1,
        kind: 'laid',
        when: (choices) => choices.opening === 'slit',
      }),
      twin('lining-armhole', armholes, { when: (choices) => !hasSleeve(choices) }),
      own('lining-side', 'side', { longer: 'gathered' }),
      twin('lining-hem', hems, { when: isBagged }),
      twin('lining-hem', hems, { kind: 'laid', when: (choices) => !isBagged(choices) }),
      twin('lining-armhole', armholes, { kind: 'laid', when: hasSleeve }),
    ],
  });
