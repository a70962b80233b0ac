import type { Hand } from './length';
import { MM_PER_INCH, type Mm } from './units';

/** A length in inches to the nearest sixteenth: `fraction` is reduced, null where the length is whole. */
export type InchParts = {
  readonly whole: number;
  readonly sixteenths: number;
  readonly fraction: { readonly above: number; readonly below: number } | null;
};

/** For those who draw fractions: mm as whole inches and sixteenths, rounded to the nearest 1/16 in; sizes only, no sign. */
export function inchParts(mm: Mm): InchParts {
  const total = Math.round((Math.abs(mm) / MM_PER_INCH) * 16);
  const sixteenths = total % 16;
  const whole = (total - sixteenths) / 16;
  if (sixteenths === 0) return { whole, sixteenths, fraction: null };
  const shared = [8, 4, 2, 1].find((each) => sixteenths % each === 0) ?? 1;
  return {
    whole,
    sixteenths,
    fraction: { above: sixteenths / shared, below: 16 / shared },
  };
}

/**
 * A length in words of the hand: nearest 1/16 in (`5 1/2 in`) or nearest 1 mm (`14.5 cm`), digits and unit as the
 * language writes them, with no break between the two. `bare` leaves the unit out, for a field that shows it beside.
 * What comes out reads back through `parseLength` as the same rounded length.
 */
export function formatLength(mm: Mm, hand: Hand, bare = false): string {
  const number = hand.unit === 'in' ? inches(mm, hand.locale) : centimetres(mm, hand.locale);
  return bare ? number : withUnit(number, hand);
}

const centimetres = (mm: Mm, locale: string): string =>
  numberFormat(locale, { maximumFractionDigits: 1 }).format(Math.round(mm) / 10);

function inches(mm: Mm, locale: string): string {
  const { whole, fraction } = inchParts(mm);
  const digits = numberFormat(locale, {});
  const over = fraction ? `${digits.format(fraction.above)}/${digits.format(fraction.below)}` : '';
  const sign = mm < 0 && (whole > 0 || fraction) ? '-' : '';
  return `${sign}${over && whole === 0 ? over : [digits.format(whole), over].filter(Boolean).join(' ')}`;
}

/** A number that is written already, with the hand's unit beside it as the language sets it: `12 × 15 cm`. */
export function withUnit(number: string, hand: Hand): string {
  const shown = isolated(number, hand);
  const words = unitParts(hand)
    .map(({ type, value }) => (type === 'integer' ? shown : value.replace(' ', NO_BREAK)))
    .join('');
  return shown === number ? words : `${RIGHT_TO_LEFT}${words}${END}`;
}

/** Holds a number and its unit together where a line breaks. */
const NO_BREAK = '\u00a0';

/** Marks that keep what stands between them out of the order of the words around it (Unicode Standard Annex 9). */
const [LEFT_TO_RIGHT, RIGHT_TO_LEFT, END] = ['\u2066', '\u2067', '\u2069'];

/** A number as it stands among words: where those run from right to left, it runs the other way, as on the tape. */
export const isolated = (number: string, hand: Hand): string =>
  RIGHT_TO_LEFT_LETTERS.test(unitFace(hand)) ? `${LEFT_TO_RIGHT}${number}${END}` : number;

/** Of Hebrew, Arabic and their kin. */
const RIGHT_TO_LEFT_LETTERS = /[\u0590-\u08ff]/;

/** What the language calls the hand's unit beside a number: `cm`; spoken, `centimetres` for that many. */
export const unitFace = (hand: Hand): string => unitPart(unitParts(hand)) ?? hand.unit;
export const unitSpoken = (hand: Hand, count: number): string => unitPart(unitParts(hand, count, 'long')) ?? hand.unit;

const unitPart = (parts: readonly Intl.NumberFormatPart[]) => parts.find(({ type }) => type === 'unit')?.value;

const unitParts = (
  { unit, locale }: Hand,
  count = 5,
  unitDisplay: 'short' | 'long' = 'short',
): readonly Intl.NumberFormatPart[] =>
  numberFormat(locale, {
    style: 'unit',
    unit: unit === 'in' ? 'inch' : 'centimeter',
    unitDisplay,
  }).formatToParts(count);

/** What a language calls millimetres beside a number. */
export const millimetreFace = (locale: string): string =>
  unitPart(numberFormat(locale, { style: 'unit', unit: 'millimeter' }).formatToParts(1)) ?? 'mm';

/** One millimetre more or less as the language writes it, with the minus that is as wide as the plus. */
export function signedMillimetre(by: 1 | -1, locale: string): string {
  const number = isolated(by > 0 ? '+1' : '−1', { unit: 'cm', locale });
  return numberFormat(locale, { style: 'unit', unit: 'millimeter' })
    .formatToParts(1)
    .map(({ type, value }) => (type === 'integer' ? number : value))
    .join('');
}

/** What parts whole numbers from tenths. */
export const decimalMark = (locale: string): string =>
  numberFormat(locale, {})
    .formatToParts(1.5)
    .find(({ type }) => type === 'decimal')?.value ?? '.';

const formats = new Map<string, Intl.NumberFormat>();

/** Latin digits everywhere, as on the tape itself; no grouping, so that nothing reads as a decimal mark. */
function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const kept =
    formats.get(key) ??
    new Intl.NumberFormat(locale, {
      ...options,
      numberingSystem: 'latn',
      useGrouping: false,
    });
  formats.set(key, kept);
  return kept;
}
