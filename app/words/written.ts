/** The digits on the tape, in every language. */
export const LATIN = { numberingSystem: 'latn' } as const;

/** A space no line ends at. */
const NO_BREAK = '\u00a0';

type Moment = number | Date;

/** A day in its own words, e.g. `27 Nov 2026`; a moment with the hour and minute beside it. */
export const writtenDay = (at: Moment, locale: string): string =>
  new Intl.DateTimeFormat(locale, { ...LATIN, dateStyle: 'medium' }).format(at);
export const writtenMoment = (at: Moment, locale: string): string =>
  new Intl.DateTimeFormat(locale, { ...LATIN, dateStyle: 'medium', timeStyle: 'short' }).format(at);

/** What Japanese writes its units in, close to their number. */
const SPACE_BEFORE_KANJI = / (?=\p{Script=Han})/gu;

/** A number of a unit that is not a length, to a tenth at most, on one line: `1.5 MB`, `40 min`, `5時間`. */
export const writtenAmount = (value: number, unit: 'megabyte' | 'hour' | 'minute', locale: string): string =>
  new Intl.NumberFormat(locale, { ...LATIN, style: 'unit', unit, maximumFractionDigits: 1 })
    .format(value)
    .replace(SPACE_BEFORE_KANJI, '')
    .replaceAll(' ', NO_BREAK);

/** Minutes as hours and minutes: `4 hr 30 min`, `4時間30分`. */
export function writtenTime(minutes: number, locale: string): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return new Intl.ListFormat(locale, { type: 'unit', style: 'narrow' }).format([
    ...(hours > 0 ? [writtenAmount(hours, 'hour', locale)] : []),
    ...(rest > 0 || hours === 0 ? [writtenAmount(rest, 'minute', locale)] : []),
  ]);
}

/** What stands beside a number that counts hundredths: `%`. */
export const percentSign = (locale: string): string =>
  new Intl.NumberFormat(locale, { ...LATIN, style: 'percent' })
    .formatToParts(1)
    .find(({ type }) => type === 'percentSign')?.value ?? '';
