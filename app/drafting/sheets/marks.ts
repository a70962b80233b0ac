// What is drawn inside a piece beside its label, as taken room: fold mark, grain arrow, lines, cuts.

import type { Mm } from '../../body';
import type { Piece } from '../draft-types';
import { add, flatten, left, type Point, scale, subtract, transformPath, unit } from '../geometry';
import { type Board, blockLine } from '../packing';

/** How deep the fold mark reaches into the piece, mm: its words stand inside it. */
export const FOLD_MARK_MM = 5;

/** Words along the grain arrow reach this far from it, mm. */
const GRAIN_WORDS_MM = 3.6;

/** Kept between words and whatever is near, mm. */
export const CLEAR_MM = 1.5;

/** How closely lines are followed when words look for room among them, mm. */
const FOLLOWED_MM = 0.2;

/** The board with a piece's inner marks taken; `to` puts its points in their place on the board. */
export function withMarks(board: Board, piece: Piece, whole: boolean, to: (p: Point) => Point): Board {
  const fold: Mm = whole || !hasFoldMark(piece) ? CLEAR_MM : FOLD_MARK_MM + CLEAR_MM;
  const lines = [
    ...[...piece.lines.map((inner) => inner.path), ...piece.cuts].map((path) => ({ path, gap: CLEAR_MM })),
    ...piece.edges.filter((edge) => edge.role === 'fold').map(({ path }) => ({ path, gap: fold })),
  ];
  const taken = lines.reduce(
    (left, { path, gap }) => blockLine(left, flatten(transformPath(path, to), FOLLOWED_MM), gap),
    board,
  );
  const words = scale(grainSide(piece, to), GRAIN_WORDS_MM / 2);
  const middle = piece.grain.map((p) => add(to(p), words));
  return blockLine(taken, middle, GRAIN_WORDS_MM / 2 + CLEAR_MM);
}

/** Whether the fold mark finds room between the fold, on x = 0, and the grain arrow; a sliver's label must do without. */
export function hasFoldMark(piece: Piece): boolean {
  return Math.min(...piece.grain.map((p) => p.x)) >= FOLD_MARK_MM + CLEAR_MM;
}

/** The side of the grain arrow its words stand on, one long: away from where a fold would be. */
export function grainSide(piece: Piece, to: (p: Point) => Point): Point {
  const [from, until] = piece.grain;
  const side = left(unit(subtract(until, from)));
  const outward = side.x < 0 ? scale(side, -1) : side;
  return subtract(to(outward), to({ x: 0, y: 0 }));
}
