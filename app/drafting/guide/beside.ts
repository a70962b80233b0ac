import type { Ref, Seam } from '../draft-types';
import type { Known } from './known';

/** Round the piece, the edge that ends where this one starts. */
export function before({ piece, edge }: Ref, known: Known): Ref {
  const { edges } = known.piece(piece);
  const at = edges.findIndex(({ name }) => name === edge);
  return { piece, edge: edges.at(at - 1)?.name ?? edge };
}

/** And the one that starts where it ends. */
export function after({ piece, edge }: Ref, known: Known): Ref {
  const { edges } = known.piece(piece);
  const at = edges.findIndex(({ name }) => name === edge);
  return { piece, edge: edges[(at + 1) % edges.length]?.name ?? edge };
}

/** It is joined to another edge, not just folded. */
export const isSewnOn = ({ piece, edge }: Ref, seams: readonly Seam[]): boolean =>
  seams.some(
    ({ join, first, second }) =>
      join !== 'folded' && [...first, ...second].some((ref) => ref.piece === piece && ref.edge === edge),
  );
