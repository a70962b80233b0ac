import type { Say, Unit } from '../../body';
import type { TextWidth } from './ink';
import type { WornPicture } from './worn-ink';

/** What pages are written with: words, the unit of lengths in them, how wide the letters are; and the first page's picture. */
export type Lettering = {
  readonly say: Say;
  readonly units: Unit;
  readonly widthOf: TextWidth;
  readonly worn?: WornPicture | undefined;
};
