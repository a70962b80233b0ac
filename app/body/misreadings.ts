import { MM_PER_INCH, type Mm } from './units';

/** What people do to a number: the code of it, what was most likely meant, and how often it happens among slips. */
export type Misreading = { readonly code: MisreadingCode; readonly offer: Mm; readonly share: number };
export type MisreadingCode = 'unit-slip' | 'tenfold' | 'digit-doubled' | 'fraction-dropped';

/** Shares of the kinds of slips among all of them: from memory of one's own mistakes, no source. */
const SHARES: { readonly [C in MisreadingCode]: number } = {
  'unit-slip': 0.3,
  tenfold: 0.2,
  'digit-doubled': 0.1,
  'fraction-dropped': 0.1,
};

/**
 * What a length (mm) may have been meant as: inches typed as centimetres or the other way round, ten times too much or
 * too little, a digit typed twice, a fraction left out. What reads the same is offered once.
 */
export function misreadings(value: Mm): readonly Misreading[] {
  return [
    ...offers('unit-slip', [value * (MM_PER_INCH / 10), value / (MM_PER_INCH / 10)]),
    ...offers('tenfold', [value * 10, value / 10]),
    ...offers('digit-doubled', withoutDoubledDigit(value)),
    ...offers('fraction-dropped', withFraction(value)),
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

function withFraction(value: Mm): Mm[] {
  if (isWhole(value / MM_PER_INCH)) return [0.25, 0.5, 0.75].map((part) => value + part * MM_PER_INCH);
  return isWhole(value / 10) ? [value + 5] : [];
}

/** A written number loses its noise beyond the fourth place. */
const decimal = (number: number) => String(Number(number.toFixed(4)));
const isWhole = (number: number) => Math.abs(number - Math.round(number)) < 1e-4 && number > 0.5;
