import type { Say } from '../../body';
import { ofCloth } from '../../drafting/catalogue';
import type { Piece } from '../../drafting/draft-types';

/** How often a piece is cut, and how; of which cloth, where it is another. */
export function cutWords(say: Say, piece: Piece): string {
  const { copies, mirrored, onFold } = piece;
  const how = mirrored ? 'cut-mirrored' : onFold ? 'cut-fold' : 'cut';
  return ofCloth(piece, say(`screen.pattern.${how}`, { count: copies }), say);
}
