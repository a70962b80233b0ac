import { formatLength, type Hand, isolated, type Unit } from '../body';
import { LATIN } from './written';

/** How a value is written where a sentence holds `{{name, format}}`. Values come from `say`, so their types are not known. */
type Format = (value: unknown, locale: string, values: Readonly<Record<string, unknown>>) => string;

export const formats: Readonly<Record<string, Format>> = {
  /** mm, in the unit given beside it as `unit`; what is words already stays. */
  length: (value, locale, { unit }) =>
    typeof value === 'string' ? value : formatLength(Number(value), { unit: unitOf(unit), locale }),
  /** The same without its unit, for a column that says it above. */
  bare: (value, locale, { unit }) => bareLength(Number(value), { unit: unitOf(unit), locale }),
  /** Radians, to a whole degree. */
  angle: (value, locale) => degrees(locale).format((Number(value) * 180) / Math.PI),
  /** A plain number, to a tenth at most: `2,5` where a comma parts whole from tenth. */
  tenth: (value, locale) => tenths(locale).format(Number(value)),
  /** A ratio, to a whole percent. */
  percent: (value, locale) => percents(locale).format(Number(value)),
  /** Names as they stand within a sentence, for languages that write them small there: `hooded top, skirt`. */
  within: (value, locale) => String(value).replace(NAME_BEGINS, (first) => first.toLocaleLowerCase(locale)),
  /** Names within a sentence, all of which it speaks of: `Oat, Moss and Fig`. */
  list: (value, locale) => lists(locale).format(textsOf(value)),
  /** Names or amounts one after the other, in a line of their own: `Hat, scarf`. */
  row: (value, locale) => rows(locale).format(textsOf(value)),
  /** An ISO 8601 calendar date, whatever the time zone; any other text stays as it is. */
  date: (value, locale) => {
    const time = Date.parse(`${String(value)}T00:00:00Z`);
    if (Number.isNaN(time)) return String(value);
    return dates(locale).format(time);
  },
};

/** What writes values of a language, made once: making it takes longer than many a page. */
function kept<T>(make: (locale: string) => T): (locale: string) => T {
  const known = new Map<string, T>();
  return (locale) => {
    const writer = known.get(locale) ?? make(locale);
    known.set(locale, writer);
    return writer;
  };
}

const numbers = (options: Intl.NumberFormatOptions) =>
  kept((locale) => new Intl.NumberFormat(locale, { ...LATIN, ...options }));
const degrees = numbers({ style: 'unit', unit: 'degree', unitDisplay: 'narrow', maximumFractionDigits: 0 });
const tenths = numbers({ maximumFractionDigits: 1 });
const percents = numbers({ style: 'percent', maximumFractionDigits: 0 });
const lists = kept((locale) => new Intl.ListFormat(locale, { type: 'conjunction' }));
const rows = kept((locale) => new Intl.ListFormat(locale, { type: 'unit', style: 'short' }));
const dates = kept((locale) => new Intl.DateTimeFormat(locale, { ...LATIN, dateStyle: 'medium', timeZone: 'UTC' }));

const bareLength = (mm: number, hand: Hand) => isolated(formatLength(mm, hand, true), hand);

/** A capital that begins a name of small letters: a letter that is a shape (`A-line`) stays. */
const NAME_BEGINS = /(?<=^|, )\p{Lu}(?=\p{Ll})/gu;

const textsOf = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : [String(value)]);

function unitOf(unit: unknown): Unit {
  return unit === 'in' ? 'in' : 'cm';
}
