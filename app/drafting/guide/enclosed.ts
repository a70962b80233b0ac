import type { Ref, Seam } from '../draft-types';
import { hasTwin, kindOf } from './kind';
import type { Known } from './known';

/** The raw edges of a seam end up between two layers: within a lining, or under an edge that is stitched down over them. */
export function isEnclosed(seam: Seam, known: Known): boolean {
  const sides = sidesOf(seam);
  const sharing = known.draft.seams.filter((other) =>
    sidesOf(other).some((refs) => refs.some((ref) => isIn(ref, sides))),
  );
  return (
    sides.every((refs) =>
      refs.every(({ piece }) => hasTwin(known.piece(piece), known) || isFoldedOver(piece, known)),
    ) || [seam, ...sharing].some((each) => sidesOf(each).some((refs) => refs.every((ref) => isCovered(ref, known))))
  );
}

const sidesOf = ({ first, second }: Seam) => [first, second].filter((refs) => refs.length > 0);
const isSame = (one: Ref, other: Ref) => one.piece === other.piece && one.edge === other.edge;
const isIn = (ref: Ref, sides: readonly (readonly Ref[])[]) =>
  sides.some((refs) => refs.some((each) => isSame(each, ref)));

/** A strip whose one edge is stitched down over its other: the seam that closes it lies within. */
const isFoldedOver = (piece: string, known: Known): boolean =>
  known.draft.seams.some(
    (seam) =>
      ['inside', 'bind-over', 'lap'].includes(kindOf(seam, known)) &&
      [...seam.first, ...seam.second].every((ref) => ref.piece === piece),
  );

/** An edge, of another piece or of its own other side, is stitched down over it. */
const isCovered = (ref: Ref, known: Known): boolean =>
  known.draft.seams.some(
    (seam) => ['inside', 'bind-over'].includes(kindOf(seam, known)) && seam.first.some((each) => isSame(each, ref)),
  );
