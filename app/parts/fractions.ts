import { formatLength, type Hand, isolated, type Mm } from '../body';

/** Fractions that have a character of their own. */
const single: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
};

/** What holds together where a line breaks. */
const NO_BREAK = '\u00a0';

/**
 * Fractions of an inch as printed: `16 11/16 in` becomes `16 11⁄16 in`, `6 1/2` becomes `6½`, and no line breaks within
 * a number or before its unit. Other text stays as it is.
 */
export function printed(text: string): string {
  const fractions = text.replace(
    /(\d+ )?(?<![\d/])(\d{1,2}\/(?:2|4|8|16))(?![\d/])/g,
    (_, whole: string | undefined, fraction: string) => {
      const one = single[fraction];
      return one
        ? `${whole?.trim() ?? ''}${one}`
        : `${whole ? whole.trim() + NO_BREAK : ''}${fraction.replace('/', '⁄')}`;
    },
  );
  return fractions.replace(/(?<=[\d⅛¼⅜½⅝¾⅞]) (?=(?:in|cm|mm)(?![\p{L}\d]))/gu, NO_BREAK);
}

/** A length as it stands on a screen; `bare` leaves the unit out. */
export function shownLength(mm: Mm, hand: Hand, bare = false): string {
  const written = formatLength(mm, hand, bare);
  return printed(bare ? isolated(written, hand) : written);
}
