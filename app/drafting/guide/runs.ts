import type { Ref, Seam } from '../draft-types';
import type { Known } from './known';

/** Whether a seam drawn on half a piece runs on over its fold to the other half: one line of stitches, not two. */
export function runsOverFold({ first, second }: Seam, known: Known): boolean {
  return [first, second].some((side) => side.some((ref) => meetsFold(ref, known)));
}

/** Whether an edge ends at the fold of its piece. */
export function meetsFold(ref: Ref, { piece }: Known): boolean {
  const { edges } = piece(ref.piece);
  const at = edges.findIndex(({ name }) => name === ref.edge);
  if (at < 0) return false;
  return [edges.at(at - 1), edges[(at + 1) % edges.length]].some((beside) => beside?.role === 'fold');
}
