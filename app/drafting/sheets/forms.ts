import type { Draft, Piece } from '../draft-types';
import { arc, flatten, type Path } from '../geometry';
import { blockLine, blockOutside, emptyBoard, nearestRoom, rowsOf } from '../packing';
import { outlineOf } from '../pieces/outline';
import { withMarks } from './marks';

/** What paper shows of a piece: its allowances and all; only the line to sew; the same as a card to draw round, whole, with a hole to hang it by. */
export const forms = ['cut', 'sewn', 'card'] as const;
export type Form = (typeof forms)[number];

/** A hole of this radius goes over a nail or a ring; card stands round it, mm (common practice, no source). */
const HOLE_MM = 2.5;
const AROUND_MM = 4;

/** A draft whose pieces are as the paper shows them: where there are no allowances, the line to cut is the one to sew. */
export function formed(draft: Draft, form: Form): Draft {
  return form === 'cut' ? draft : { ...draft, pieces: draft.pieces.map((piece) => bare(piece, form)) };
}

/** Whether a piece is shown without allowances: one line is both. */
export function isBare({ cutLine, seamLine }: Pick<Piece, 'cutLine' | 'seamLine'>): boolean {
  return cutLine === seamLine;
}

function bare(piece: Piece, form: Form): Piece {
  const edges = piece.edges.map((edge) => ({ ...edge, allowance: 0 }));
  const plain = { ...piece, edges, cutLine: piece.seamLine };
  return form === 'card' ? { ...plain, cuts: [...plain.cuts, ...holeIn(plain)] } : plain;
}

/** As near to the top as there is card round it; on the fold half of it, which unfolds. None where it has no room. */
function holeIn(piece: Piece): readonly Path[] {
  const outline = outlineOf(piece.cutLine, piece.onFold);
  const rows = rowsOf([outline]);
  const side = 2 * HOLE_MM;
  // On the fold only the middle is looked at, as wide as the hole. The board reaches past the piece: its edge lies on it.
  const [left, width] = piece.onFold ? [-HOLE_MM, side] : [rows.left - AROUND_MM, rows.width + 2 * AROUND_MM];
  const top = rows.top - AROUND_MM;
  const to = (p: { readonly x: number; readonly y: number }) => ({ x: p.x - left, y: p.y - top });
  const edges = piece.edges.filter(({ role }) => role !== 'fold');
  const empty = emptyBoard(width, rows.height + 2 * AROUND_MM);
  const marked = withMarks(empty, { ...piece, edges }, piece.onFold, to);
  // A slit on the fold is an edge that does not show in the outline.
  const clear = edges.reduce((board, { path }) => blockLine(board, flatten(path, 1).map(to), AROUND_MM), marked);
  const place = nearestRoom(blockOutside(clear, outline.map(to), AROUND_MM), side, side, { x: width / 2, y: 0 });
  if (!place) return [];
  const middle = { x: place.x + HOLE_MM + left, y: place.y + HOLE_MM + top };
  return piece.onFold
    ? [arc({ ...middle, x: 0 }, HOLE_MM, -Math.PI / 2, Math.PI / 2)]
    : [arc(middle, HOLE_MM, 0, 2 * Math.PI)];
}
