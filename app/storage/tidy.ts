/** The longest name and note a card may carry, in characters. */
const LONGEST_NAME = 80;
const LONGEST_NOTE = 500;

/** Control characters and marks that turn the direction of the text around them. */
const UNSEEN = /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;

/** A name as it is kept: one line, composed, nothing unseen, at most 80 characters. */
export const tidyName = (name: string): string =>
  cut(name.normalize('NFC').replace(UNSEEN, ' ').replace(/\s+/g, ' ').trim(), LONGEST_NAME);

/** A note as it is kept: line breaks stay. At most 500 characters. */
export const tidyNote = (note: string): string =>
  cut(
    note
      .normalize('NFC')
      .replace(/\r\n?/g, '\n')
      .split('\n')
      .map((line) => line.replace(UNSEEN, ' '))
      .join('\n')
      .trim(),
    LONGEST_NOTE,
  );

const cut = (text: string, longest: number) => Array.from(text).slice(0, longest).join('').trim();
