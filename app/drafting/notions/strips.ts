import { isStrip } from '../cloth';
import type { Notion, Piece } from '../draft-types';
import { pathBounds } from '../geometry';

/** Two ends are joined aslant and pressed flat: what each strip is cut longer, mm (common practice, no source). */
const JOIN_MM = 20;

/** Strips that bind an edge, as cut in one long run: on the bias where their grain lies aslant, else along the stretch. */
export function stripsOf(pieces: readonly Piece[]): readonly Notion[] {
  return pieces.flatMap((piece): Notion[] => {
    if (!isStrip(piece)) return [];
    const box = pathBounds(piece.cutLine);
    const [from, to] = piece.grain;
    const kind = Math.abs(to.x - from.x) > 1e-6 ? 'bias' : 'strip';
    const length = (box.right - box.left) * (piece.onFold ? 2 : 1) + JOIN_MM;
    const count = piece.copies > 1 ? { count: piece.copies } : {};
    const of = piece.of ? { of: piece.of } : {};
    return [{ kind, place: piece.name, length, width: box.bottom - box.top, ...count, ...of }];
  });
}
