// Furniture that may lie on any page: boxes that find their places among the pieces.

import { BANK_CARD_MM, type Mm } from '../../body';
import { type Box, type Rows, rowsOf, type Stamp, stampOf } from '../packing';
import { cornersOf } from '../pieces/outline';
import { LONG_ROOM, STRIP_ROOM, TITLE_ROOM } from './furniture';
import { type Mapped, mapLeastSize } from './map';

/**
 * `checks`: the card with the square in it, `wrong`: what to do when it is wrong; `notes`: all words with the key below them, `words`: all words, `told`: those not
 * on care; `title`, `strip` and `map` belong on the first page; `block` is the strip of a page that a piece fills.
 */
export type LooseKind =
  | ('title' | 'strip' | 'map' | 'block')
  | ('card' | 'square' | 'checks' | 'wrong' | 'joining' | 'long')
  | ('notes' | 'words' | 'told' | 'care' | 'key');

/** A box of furniture as the sheets see it. */
export type Loose = { readonly kind: LooseKind; readonly rows: Rows; readonly stamp: Stamp };

export type Size = { readonly width: Mm; readonly height: Mm };

/** Kept between furniture and whatever lies beside it, mm. */
const CLEAR_MM = 3;

/** A bank card's outline, lying or upright. */
export const CARD = [BANK_CARD_MM, { width: BANK_CARD_MM.height, height: BANK_CARD_MM.width }] as const;

/** What the words on prints that are wrong need, mm. */
export const WRONG = [
  { width: 86, height: 15 },
  { width: 56, height: 21 },
  { width: 42, height: 28 },
] as const;

/** What words on joining pages need, mm. */
const JOINING = [
  { width: 60, height: 22 },
  { width: 40, height: 32 },
];

/** One kind of furniture in each of its sizes: it takes whichever fits best. */
export function loose(kind: LooseKind, sizes: readonly Size[]): readonly Loose[] {
  return sizes.map(({ width, height }) => {
    const rows = rowsOf([cornersOf({ x: 0, y: 0, width, height })]);
    return { kind, rows, stamp: stampOf(rows, CLEAR_MM) };
  });
}

/** All checks that may lie anywhere, and the words on joining where pages join. */
export function looseChecks(joins: boolean): readonly (readonly Loose[])[] {
  return [
    loose('long', [LONG_ROOM.upright, LONG_ROOM.level]),
    loose('checks', CARD),
    loose('wrong', WRONG),
    ...(joins ? [loose('joining', JOINING)] : []),
  ];
}

/** What the first page must have, where it has no head across its top. */
export function looseHead(pages: readonly Mapped[]): readonly (readonly Loose[])[] {
  return [
    loose('title', TITLE_ROOM),
    loose('strip', STRIP_ROOM),
    ...(pages.length > 1 ? [loose('map', [mapLeastSize(pages)])] : []),
  ];
}

export function isOfFirst({ kind }: Loose): boolean {
  return kind === 'title' || kind === 'strip' || kind === 'map';
}

/** A box of furniture in a place it has already. */
export function standing(kind: LooseKind, { x, y, width, height }: Box) {
  const [turned] = loose(kind, [{ width, height }]);
  return turned ? [{ turned, x, y }] : [];
}

/** What one kind of furniture takes at least, mm². */
export function looseArea(sizes: readonly Loose[]): number {
  return Math.min(...sizes.map(({ rows }) => rows.width * rows.height));
}
