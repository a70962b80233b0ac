import { bodyBreaks } from './body';
import type { RoomBreak } from './break';
import { draftingBreaks } from './drafting';
import { keepingBreaks } from './keeping';
import { paperBreaks } from './paper';
import { screenBreaks } from './screens';
import { sizeBreaks } from './sizes';

/** Every place that is broken on purpose, by rooms. */
export const breaks: readonly RoomBreak[] = [
  ...bodyBreaks,
  ...sizeBreaks,
  ...draftingBreaks,
  ...paperBreaks,
  ...keepingBreaks,
  ...screenBreaks,
];
