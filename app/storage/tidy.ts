import { cleanLine, cleanLines, NAME_CHARACTERS, NOTE_CHARACTERS } from '../body';

/** A name as it is kept: one clean line, no longer than a card may carry. */
export const tidyName = (name: string): string => cut(cleanLine(name), NAME_CHARACTERS);

/** A note as it is kept: line breaks stay. */
export const tidyNote = (note: string): string => cut(cleanLines(note), NOTE_CHARACTERS);

const cut = (text: string, longest: number) => Array.from(text).slice(0, longest).join('').trim();
