import type { Stock } from './stock';

/** A rectangle that pieces may lie in: a length of cloth, a page. Fields lie side by side, from left to right. */
export type Field = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** A piece to pack: the shapes it may lie as, one for each turn; `hold`: on the fold, along that edge of its field; `only`: in that field alone. */
export type Packed = { readonly turns: readonly number[]; readonly hold?: 'top' | 'bottom'; readonly only?: Field };

/** A shape of the stock with the left top corner of its box. */
export type Place = { readonly shape: number; readonly x: number; readonly y: number };

/** What is to be packed; `fixed` lies where it lies, and the others keep off it. */
export type Job = { readonly stock: Stock; readonly pieces: readonly Packed[]; readonly fixed?: readonly Place[] };

/** A lay of all pieces on a strip: x along its length from 0, y across its width. */
export type Strip = { readonly length: number; readonly places: readonly Place[] };

/** How far a search is: `steps` places were weighed; `best` is what it found so far, one place a piece. */
export type Found<Best> = { readonly steps: number; readonly best: Best };

/** Lengths that differ by less are alike. */
export const ALIKE = 1e-9;

/** Where the corner of a piece may lie within a field; there is no room where `right` < `left` or `bottom` < `top`. */
export function roomFor({ stock }: Job, piece: Packed, shape: number, field: Field): Field {
  if (piece.only && piece.only !== field) return NOWHERE;
  const { width = 0, height = 0 } = stock.shapes[shape] ?? {};
  const [right, lowest] = [snug(field.left, field.right - width), snug(field.top, field.bottom - height)];
  const top = piece.hold === 'bottom' ? lowest : field.top;
  const bottom = piece.hold === 'top' ? Math.min(field.top, lowest) : lowest;
  return { left: field.left, top, right, bottom };
}

const NOWHERE: Field = { left: 0, top: 0, right: -1, bottom: -1 };

/** What turning an outline may add to its size: a piece exactly as large as its field fits in every quarter turn. */
const ROUNDING = 1e-9;

function snug(least: number, most: number): number {
  return most < least && most > least - ROUNDING * Math.max(1, Math.abs(least)) ? least : most;
}
