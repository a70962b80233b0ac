/** The seven marks between two inches on a tape, as a maker reads them. */
export const eighths: readonly string[] = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

const SIXTEENTHS_IN_INCH = 16;
const TENTHS_IN_CM = 10;

/** What a key of the pad does to the text of a length field. */
export type Key =
  | { readonly press: 'digit'; readonly digit: string }
  | { readonly press: 'point'; readonly mark: string }
  | { readonly press: 'eighth'; readonly count: number }
  | { readonly press: 'sixteenth' }
  | { readonly press: 'millimetre'; readonly by: 1 | -1 }
  | { readonly press: 'erase' };

/** A text the pad itself could have written: whole inches as digits and a count of sixteenths. */
type Inches = { readonly whole: string; readonly sixteenths: number };

/**
 * The text after a key is pressed. Digits go before the fraction, so that it does not matter which is pressed first;
 * the same fraction again takes it away. A text that people typed in some other way is only added to or cut at its end.
 */
export function pressKey(text: string, key: Key): string {
  const inches = readInches(text);
  if (key.press === 'digit')
    return inches ? writeInches({ ...inches, whole: inches.whole + key.digit }) : text + key.digit;
  if (key.press === 'point')
    return /[.,]/.test(text) || (inches && inches.sixteenths > 0) ? text : `${text || '0'}${key.mark}`;
  if (key.press === 'erase') return erase(text, inches);
  if (key.press === 'millimetre') return nudge(text, key.by);
  const before = inches ?? { whole: text.trim(), sixteenths: 0 };
  return writeInches({
    ...before,
    sixteenths: pressedFraction(before.sixteenths, key),
  });
}

/** The same where the text is a number kept before: most keys begin a new one, a nudge moves the one there is. */
export function pressAnew(text: string, key: Key): string {
  return pressKey(key.press === 'sixteenth' || key.press === 'millimetre' ? text : '', key);
}

/** How many sixteenths the text ends in, for showing which keys are down; 0 where the pad did not write it. */
export function sixteenthsIn(text: string): number {
  return readInches(text)?.sixteenths ?? 0;
}

function pressedFraction(sixteenths: number, key: { press: 'eighth'; count: number } | { press: 'sixteenth' }): number {
  if (key.press === 'sixteenth') return sixteenths % 2 ? sixteenths - 1 : sixteenths + 1;
  return sixteenths === key.count * 2 ? 0 : key.count * 2;
}

function readInches(text: string): Inches | null {
  const found = /^(\d*)\s*(?:([⅛¼⅜½⅝¾⅞])|(\d+)⁄16)?$/.exec(text.trim());
  if (!found) return null;
  const [, whole = '', eighth, sixteenths] = found;
  if (eighth)
    return {
      whole,
      sixteenths: 2 * (eighths.indexOf(eighth) + 1),
    };
  return { whole, sixteenths: Number(sixteenths ?? 0) };
}

/** Whole inches and sixteenths as the pad writes them: `8½`, `8 9⁄16`. */
export function writeInches({ whole, sixteenths }: Inches): string {
  if (sixteenths === 0) return whole;
  if (sixteenths % 2 === 0) return `${whole}${eighths[sixteenths / 2 - 1] ?? ''}`;
  return `${whole} ${sixteenths}⁄${SIXTEENTHS_IN_INCH}`.trim();
}

function erase(text: string, inches: Inches | null): string {
  if (inches && inches.sixteenths > 0) return inches.whole;
  return text.slice(0, -1).trimEnd();
}

/** One millimetre more or less, in tenths of a centimetre, so that no rounding creeps in. */
function nudge(text: string, by: 1 | -1): string {
  const found = /^(\d*)(?:([.,])(\d?))?$/.exec(text.trim());
  if (!found) return text;
  const [, whole = '', mark = '.', tenth = ''] = found;
  const tenths = Math.max(0, Number(whole || 0) * TENTHS_IN_CM + Number(tenth || 0) + by);
  return `${Math.floor(tenths / TENTHS_IN_CM)}${mark}${tenths % TENTHS_IN_CM}`;
}
