import type { Draft, Edge, Piece, Ref } from '../../app/drafting/draft-types';

/**
 * Where a seam ends at an opening, so does what is sewn to it: the fold of a strip or a collar never lies across the
 * opening. A piece slit open along its fold may end a strip there.
 */
export function foldedOverOpenings(draft: Draft): string[] {
  const pieces = new Map(draft.pieces.map((piece) => [piece.name, piece]));
  const sewn = draft.seams.filter((seam) => !['laid', 'folded'].includes(seam.join));
  return sewn.flatMap((seam) =>
    (['start', 'end'] as const).flatMap((side) => {
      const at = (refs: readonly Ref[]) => besideEnd(refs[side === 'start' ? 0 : refs.length - 1], side, pieces);
      const [ours, theirs] = [at(seam.first), at(seam.second)];
      const over = crosses(ours, theirs) || crosses(theirs, ours);
      return over ? [`seam ${seam.name}: at its ${side} a fold lies over an opening`] : [];
    }),
  );
}

type Beside = { readonly edge: Edge | undefined; readonly slit: boolean };

function crosses(folded: Beside, open: Beside): boolean {
  const opens: readonly string[] = ['closure', 'neckline', ...(folded.slit ? [] : ['opening'])];
  return folded.edge?.role === 'fold' && opens.includes(open.edge?.role ?? '');
}

function besideEnd(ref: Ref | undefined, side: 'start' | 'end', pieces: ReadonlyMap<string, Piece>): Beside {
  const piece = ref && pieces.get(ref.piece);
  const edges = piece?.edges ?? [];
  const at = edges.findIndex((edge) => edge.name === ref?.edge);
  const before = (side === 'start') !== Boolean(ref?.back);
  return {
    edge: edges[(at + (before ? edges.length - 1 : 1)) % edges.length],
    slit: (piece?.cuts.length ?? 0) > 0,
  };
}
