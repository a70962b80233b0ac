import { LONGEST_MM, MM_PER_INCH, type Mm, SHORTEST_MM, type Unit } from './units';

/** How a maker reads and types lengths: the unit meant when none is written, and a BCP 47 language tag. */
export type Hand = { readonly unit: Unit; readonly locale: string };

/** Why a text is not a length; words are made from the code elsewhere. */
export type LengthFault =
  | 'length.empty'
  | 'length.paragraph'
  | 'length.letters'
  | 'length.unfinished'
  | 'length.nothing-below'
  | 'length.improper'
  | 'length.zero'
  | 'length.negative'
  | 'length.too-short'
  | 'length.too-long'
  | 'length.unclear';

export type ParsedLength = { readonly ok: true; readonly mm: Mm } | { readonly ok: false; readonly code: LengthFault };

/** Every fraction of an inch on a tape is one; so a length is the same number in a file, a link and a store. */
const wholeNanometres = (mm: Mm): Mm => Math.round(mm * 1e6) / 1e6;

/** Longer than any length a person writes: a pasted paragraph. */
const LONGEST_TEXT = 40;

/**
 * Reads a length as people write it: `5 1/2`, `5½`, `5-1/2`, `5 1/2"`, `5 1⁄2`, `14,5`, `14.5 cm`, `145 mm`. Decimal and
 * group marks follow the locale where they could mean two things (`1,250`). The result is exact, never rounded.
 * A whole number run into its fraction (`51/2`) is refused as improper: it is far more often 5 1/2 than 25 1/2.
 */
export function parseLength(text: string, hand: Hand): ParsedLength {
  const typed = text.trim();
  if (typed === '') return fault('length.empty');
  if (typed.length > LONGEST_TEXT || /[\n\r\u2028\u2029]/.test(typed)) return fault('length.paragraph');
  const plain = plainText(typed);
  const negative = /^-/.test(plain);
  const { number, perUnit } = splitUnit(plain.replace(/^[-+]\s*/, ''), hand.unit);
  if (/\p{L}/u.test(number)) return fault('length.letters');
  const read = readNumber(number, hand.locale);
  if (typeof read === 'string') return fault(read);
  if (negative && read > 0) return fault('length.negative');
  const mm = wholeNanometres(read * perUnit);
  if (mm === 0) return fault('length.zero');
  if (mm < SHORTEST_MM) return fault('length.too-short');
  if (mm > LONGEST_MM) return fault('length.too-long');
  return { ok: true, mm };
}

const fault = (code: LengthFault): ParsedLength => ({ ok: false, code });

/** Vulgar fractions and their Unicode spelling, ¼ = 1⁄4. */
const vulgarFraction = /[¼-¾⅐-⅞]/g;

/**
 * One spelling for look-alikes. A vulgar fraction is set apart *before* compatibility normalisation, which would turn
 * `1¼` into `11⁄4`.
 */
function plainText(text: string): string {
  return text
    .replace(vulgarFraction, (fraction) => ` ${fraction}`)
    .normalize('NFKC')
    .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace(/[\u2044\u2215\u2571]/g, '/')
    .replace(/\u066b/g, '.')
    .replace(/\u066c/g, ',')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u200e\u200f\u061c\u2066-\u2069]/g, '')
    .replace(/[\s_]+/g, ' ')
    .trim();
}

/** Unit words as written in the languages of the app, and mm in each. */
const unitWords: readonly { readonly words: RegExp; readonly mm: Mm }[] = [
  { words: /\s*("|\u2032\u2032|''|’’|”|“)$/u, mm: MM_PER_INCH },
  {
    words: /\s*(?<!\p{L})(in|inch|inches|ins|zoll|po|pouces?|pulg|pulgadas?|インチ|بوصات|بوصة)\.?$/iu,
    mm: MM_PER_INCH,
  },
  {
    words: /\s*(?<!\p{L})(cm|centimet(er|re)s?|centimètres?|centímetros?|zentimeter|センチ(メートル)?|سم)\.?$/iu,
    mm: 10,
  },
  {
    words: /\s*(?<!\p{L})(mm|millimet(er|re)s?|millimètres?|milímetros?|ミリ(メートル)?|مم|ملم)\.?$/iu,
    mm: 1,
  },
];

function splitUnit(text: string, unit: Unit): { number: string; perUnit: Mm } {
  const written = unitWords.find((each) => each.words.test(text));
  if (written) return { number: text.replace(written.words, ''), perUnit: written.mm };
  return { number: text, perUnit: unit === 'in' ? MM_PER_INCH : 10 };
}

/** A number with an optional fraction after it, or what is wrong with it. */
function readNumber(text: string, locale: string): number | LengthFault {
  if (text === '') return 'length.unclear';
  if (/\/\s*$/.test(text)) return 'length.unfinished';
  const fraction = /^(?:(\d+)\s*[ +-]\s*)?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (!fraction) return readDecimal(text, locale);
  const [, whole, above, below] = fraction;
  if (Number(below) === 0) return 'length.nothing-below';
  if (Number(above) >= Number(below)) return 'length.improper';
  return Number(whole ?? 0) + Number(above) / Number(below);
}

function readDecimal(text: string, locale: string): number | LengthFault {
  if (!/^(\d+([.,]\d*)*|[.,]\d+)$/.test(text)) return 'length.unclear';
  const marks = text.replace(/\d/g, '');
  if (marks === '') return Number(text);
  const last = marks.slice(-1);
  const groups = new RegExp(`^[1-9]\\d{0,2}([${last}]\\d{3})+$`);
  if (new Set(marks).size === 1 && groups.test(text) && (marks.length > 1 || last === groupMark(locale)))
    return Number(text.replaceAll(last, ''));
  if (marks.length > 1) {
    const [whole, ...rest] = text.split(last);
    const grouped = /^[1-9]\d{0,2}([.,]\d{3})+$/.test(whole ?? '');
    return grouped && rest.length === 1 ? Number(`${whole?.replace(/[.,]/g, '')}.${rest[0]}`) : 'length.unclear';
  }
  return Number(text.replace(last, '.'));
}

/** What groups thousands in a language, where it is a point or a comma. */
function groupMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale, {
    numberingSystem: 'latn',
  }).formatToParts(1234567);
  return parts.find((part) => part.type === 'group')?.value ?? '';
}
