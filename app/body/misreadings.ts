import type { Measure } from './measure';
import { MM_PER_INCH, type Mm } from './units';

/** What people do to a number: the code of it, what was most likely meant, and how often it happens among slips. */
export type Misreading = { readonly code: MisreadingCode; readonly offer: Mm; readonly share: number };
export type MisreadingCode =
  | 'unit-slip'
  | 'tenfold'
  | 'digit-doubled'
  | 'half-for-whole'
  | 'whole-for-half'
  | 'tape-end';

/** Shares of the kinds of slips among all of them: from memory of one's own mistakes, no source. */
const SHARES: { readonly [C in MisreadingCode]: number } = {
  'unit-slip': 0.25,
  tenfold: 0.15,
  'digit-doubled': 0.08,
  'half-for-whole': 0.12,
  'whole-for-half': 0.3,
  'tape-end': 0.06,
};

/** What is half the way round, and easily taken as the whole. */
const halves: ReadonlySet<string> = new Set(['front-width', 'back-width']);

/** Dressmakers' tapes: sixty inches, or a metre and a half (common practice, no source). */
const TAPE_MM = { in: 60 * MM_PER_INCH, cm: 1500 } as const;

/**
 * What a length (mm) of a kind of measure may have been meant as: inches typed as centimetres or the other way round, ten
 * times too much or too little, a digit typed twice, half the way round for the whole, the whole for half (a width that is half a girth),
 * the tape read from its other end. What reads the same is offered once.
 */
export function misreadings(value: Mm, { id, nature }: Pick<Measure, 'id' | 'nature'>): readonly Misreading[] {
  return [
    ...offers('unit-slip', [value * (MM_PER_INCH / 10), value / (MM_PER_INCH / 10)]),
    ...offers('tenfold', [value * 10, value / 10]),
    ...offers('digit-doubled', withoutDoubledDigit(value)),
    ...(nature === 'girth' ? offers('half-for-whole', [value * 2]) : []),
    ...(halves.has(id) ? offers('whole-for-half', [value / 2]) : []),
    ...offers('tape-end', fromOtherEnd(value)),
  ];
}

const offers = (code: MisreadingCode, values: readonly Mm[]): Misreading[] =>
  [...new Set(values)].map((offer) => ({ code, offer, share: SHARES[code] / values.length }));

/** The ways a length may have been written: in mm, in cm, in whole inches with or without a fraction. */
function withoutDoubledDigit(value: Mm): Mm[] {
  return [1, 10, MM_PER_INCH].flatMap((unit) => {
    const written = decimal(value / unit);
    return [...written].flatMap((digit, at) =>
      digit !== '.' && digit === written[at + 1] ? [Number(written.slice(0, at) + written.slice(at + 1)) * unit] : [],
    );
  });
}

/** What is a whole number of sixteenths was read in inches, all else in millimetres; from a tape's far end. */
function fromOtherEnd(value: Mm): Mm[] {
  const whole = isWhole((value / MM_PER_INCH) * 16) ? TAPE_MM.in : TAPE_MM.cm;
  return value < whole ? [whole - value] : [];
}

/** A written number loses its noise beyond the fourth place. */
const decimal = (number: number) => String(Number(number.toFixed(4)));
const isWhole = (number: number) => Math.abs(number - Math.round(number)) < 1e-4 && number > 0.5;
