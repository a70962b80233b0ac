import type { Draft } from '../../app/drafting/draft-types';

const FINISHED: readonly string[] = ['fold', 'edge', 'finished'];

/**
 * Edges with no finish by name, as `piece.edge`: in no seam, not even folded or laid, and not said to be left as cut
 * (role `edge`) or finished already. A stub at a neck's or hem's end, a skirt's opening, the end of a strap are such where nobody thought
 * of them.
 */
export function looseEdges(draft: Draft): string[] {
  const used = new Set(
    draft.seams.flatMap((seam) => [...seam.first, ...seam.second]).map((ref) => `${ref.piece}.${ref.edge}`),
  );
  return draft.pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => !FINISHED.includes(edge.role))
      .map((edge) => `${piece.name}.${edge.name}`)
      .filter((name) => !used.has(name)),
  );
}
