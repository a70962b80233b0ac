import type { Say } from '../../body';
import type { Piece } from '../../drafting/draft-types';

/** How often a piece is cut, and how. */
export const cutWords = (say: Say, { copies, mirrored, onFold }: Piece): string =>
  say(mirrored ? 'screen.pattern.cut-mirrored' : onFold ? 'screen.pattern.cut-fold' : 'screen.pattern.cut', {
    count: copies,
  });
