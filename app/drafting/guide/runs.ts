import type { Ref, Seam } from '../draft-types';
import { endTangent, type Point, startTangent } from '../geometry';
import type { Known } from './known';

/** Whether a seam drawn on half a piece runs on over its fold to the other half: one line of stitches, not two. */
export function runsOverFold({ first, second }: Seam, known: Known): boolean {
  return [first, second].some((side) => side.some((ref) => meetsFold(ref, known)));
}

/** An edge that goes on over a fold meets it square, but for so much, the sine of an angle: else the piece ends there in a point, a gore, a gusset. */
const SQUARE = 0.15;

/** Whether an edge ends at the fold of its piece, and goes on beyond it. */
export function meetsFold(ref: Ref, { piece }: Known): boolean {
  const { edges } = piece(ref.piece);
  const at = edges.findIndex(({ name }) => name === ref.edge);
  const edge = edges[at];
  if (!edge) return false;
  const isSquare = ({ y }: Point) => Math.abs(y) < SQUARE;
  return (
    (edges.at(at - 1)?.role === 'fold' && isSquare(startTangent(edge.path))) ||
    (edges[(at + 1) % edges.length]?.role === 'fold' && isSquare(endTangent(edge.path)))
  );
}
