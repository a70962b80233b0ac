import type { Direction } from './locales';

/** A letter of a script that runs from right to left. */
const LEFTWARDS = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
const against: Readonly<Record<Direction, RegExp>> = {
  ltr: LEFTWARDS,
  rtl: new RegExp(`(?!${LEFTWARDS.source})\\p{L}`, 'u'),
};

/** What stands between these keeps its own direction and leaves the words around it theirs (Unicode Standard Annex 9). */
const [FIRST_STRONG, END] = ['\u2068', '\u2069'];

/** Values for a sentence: names with letters that run against its lines are set apart from it; `unit` is no word but a code. */
export function apart({ unit, ...values }: Readonly<Record<string, unknown>>, direction: Direction) {
  const setApart = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(setApart);
    return typeof value === 'string' && against[direction].test(value) ? `${FIRST_STRONG}${value}${END}` : value;
  };
  const written = Object.entries(values).map(([name, value]) => [name, setApart(value)] as const);
  return { unit, ...Object.fromEntries(written) };
}
