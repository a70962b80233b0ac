import type { Piece, Seam } from '../draft-types';
import type { Finish } from './guide-types';
import { kindOf } from './kind';
import type { Known } from './known';

/** How every edge of every piece is finished; an edge that nothing finishes is left out. */
export function finishesOf(known: Known): readonly Finish[] {
  return known.draft.pieces.flatMap((piece) =>
    piece.edges.flatMap((edge): Finish[] => {
      if (edge.role === 'fold') return [{ piece: piece.name, edge: edge.name, how: 'fold' }];
      const found = known.draft.seams.flatMap((seam) => howIn(seam, piece, edge.name, known)).sort(bySurest)[0];
      if (found) return [{ piece: piece.name, edge: edge.name, ...found }];
      return edge.role === 'edge' || edge.allowance === 0 ? [{ piece: piece.name, edge: edge.name, how: 'raw' }] : [];
    }),
  );
}

type Found = Pick<Finish, 'how' | 'seam'>;

/** Of several, what hides the raw edge. */
const surest: readonly Finish['how'][] = ['bound', 'turned', 'enclosed', 'stitched', 'sewn'];
const bySurest = (a: Found, b: Found) => surest.indexOf(a.how) - surest.indexOf(b.how);

function howIn(seam: Seam, piece: Piece, edge: string, known: Known): Found[] {
  const holds = (side: Seam['first']) => side.some((ref) => ref.piece === piece.name && ref.edge === edge);
  const [one, two] = [holds(seam.first), holds(seam.second)];
  if (!one && !two) return [];
  const kind = kindOf(seam, known);
  if (kind === 'raw-hem') return [{ how: 'raw', seam: seam.name }];
  if (seam.join === 'folded') return [{ how: 'turned', seam: seam.name }];
  if (seam.join === 'laid') return [{ how: 'stitched', seam: seam.name }];
  if (kind === 'bind') return [{ how: known.isStrip(piece.name) ? 'sewn' : 'bound', seam: seam.name }];
  return [{ how: kind === 'bag' ? 'enclosed' : 'sewn', seam: seam.name }];
}
