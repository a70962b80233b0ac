import type { Say } from '../../body';
import type { Piece } from '../draft-types';

/** How many to cut of a piece, and how. */
export function howMany(piece: Piece, whole: boolean, say: Say): string {
  const count = piece.copies;
  if (piece.onFold && !whole) return say('label.cut-on-fold', { count });
  if (piece.mirrored) return say('label.cut-mirrored', { count, half: count / 2 });
  return say('label.cut', { count });
}
