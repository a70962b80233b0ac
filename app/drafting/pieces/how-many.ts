import type { Say } from '../../body';
import type { Piece } from '../draft-types';

/** How many to cut of a piece, and how; of which cloth, where it is not the garment's own. */
export function howMany(piece: Piece, whole: boolean, say: Say): string {
  return ofCloth(piece, count(piece, whole, say), say);
}

/** A line of a cutting list, and the cloth a piece is cut from where it is another. */
export function ofCloth({ of }: Pick<Piece, 'of'>, cut: string, say: Say): string {
  return of ? say(`label.of.${of}`, { cut }) : cut;
}

function count(piece: Piece, whole: boolean, say: Say): string {
  const count = piece.copies;
  if (piece.onFold && !whole) return say('label.cut-on-fold', { count });
  if (piece.mirrored) return say('label.cut-mirrored', { count, half: count / 2 });
  return say('label.cut', { count });
}
