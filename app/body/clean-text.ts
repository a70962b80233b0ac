/**
 * Text a stranger typed, made safe to show beside our own words. Control characters (C0, C1), line and paragraph
 * separators, bidi embeddings, overrides and isolates (U+202A–202E, U+2066–2069, see Unicode TR 36), byte order marks
 * and lone surrogates are taken out; joiners and the plain direction marks stay, since names in Persian and Arabic and
 * emoji need them. Markup is left as it is: it is shown as text, never parsed. The result is NFC, trimmed, spaces single.
 */
export function cleanLine(text: string): string {
  return text.replace(UNWELCOME, '').replace(/\s+/gu, ' ').normalize('NFC').trim();
}

/** The same for text of several lines: line ends become `\n`, at most one empty line in a row. */
export function cleanLines(text: string): string {
  return text
    .split(/\r\n|[\n\r\u2028\u2029]/u)
    .map(cleanLine)
    .join('\n')
    .replace(/\n{3,}/gu, '\n\n')
    .trim();
}

/** The longest name and note a toy may have, in characters: code points. Changing one changes what older apps refuse. */
export const NAME_CHARACTERS = 80;
export const NOTE_CHARACTERS = 500;

export const characters = (text: string) => [...text].length;

/** All of the above except tab, line feed, vertical tab, form feed and carriage return, which become spaces. */
const UNWELCOME = /(?![\t-\r])[\p{Cc}\p{Surrogate}\u202A-\u202E\u2066-\u2069\uFEFF\uFFF9-\uFFFB]/gu;
