import type { Say, Unit } from '../../body';
import type { TextWidth } from './ink';

/** What pages are written with: words, the unit of lengths in them, and how wide the letters are. */
export type Lettering = { readonly say: Say; readonly units: Unit; readonly widthOf: TextWidth };
