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
 * language writes them. `bare` leaves the unit out, for a field that shows it beside. What comes out reads back
 * through `parseLength` as the same rounded length.
 */
export function formatLength(mm: Mm, hand: Hand, bare = false): string {
  if (hand.unit === 'in') return inches(mm, hand.locale, bare);
  const style = bare ? {} : ({ style: 'unit', unit: 'centimeter' } as const);
  return numberFormat(hand.locale, {
    ...style,
    maximumFractionDigits: 1,
  }).format(Math.round(mm) / 10);
}

function inches(mm: Mm, locale: string, bare: boolean): string {
  const { whole, fraction } = inchParts(mm);
  const digits = numberFormat(locale, {});
  const over = fraction ? `${digits.format(fraction.above)}/${digits.format(fraction.below)}` : '';
  const sign = mm < 0 && (whole > 0 || fraction) ? '-' : '';
  const number = `${sign}${over && whole === 0 ? over : [digits.format(whole), over].filter(Boolean).join(' ')}`;
  return bare ? number : withUnit(number, { unit: 'in', locale });
}

/** A number that is written already, with the hand's unit beside it as the language sets it: `12 × 15 cm`. */
export const withUnit = (number: string, hand: Hand): string =>
  unitParts(hand)
    .map(({ type, value }) => (type === 'integer' ? number : value))
    .join('');

/** What the language calls the hand's unit beside a number: `cm`. */
export const unitFace = (hand: Hand): string => unitParts(hand).find(({ type }) => type === 'unit')?.value ?? hand.unit;

function unitParts({ unit, locale }: Hand): readonly Intl.NumberFormatPart[] {
  return numberFormat(locale, { style: 'unit', unit: unit === 'in' ? 'inch' : 'centimeter' }).formatToParts(5);
}

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
