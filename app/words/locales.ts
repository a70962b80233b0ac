/** What a language file holds: words by dotted name, as deep as needed. */
export type Sentences = { readonly [name: string]: string | Sentences };

type Fetched = Promise<{ readonly default: Sentences }>;

/** Which way a language's lines run. */
export type Direction = 'ltr' | 'rtl';

/**
 * One row a language: what it calls itself, which way its lines run, how its file is fetched, and the few words of it that the first screen says (the build cuts them
 * out, see `.config/first-words.mjs`). Adding a language is adding a row and the file.
 */
const files = {
  en: {
    name: 'English',
    runs: 'ltr',
    whole: () => import('../../locales/en.json'),
    first: () => import('../../locales/en.json?first'),
  },
  es: {
    name: 'Español',
    runs: 'ltr',
    whole: () => import('../../locales/es.json'),
    first: () => import('../../locales/es.json?first'),
  },
  fr: {
    name: 'Français',
    runs: 'ltr',
    whole: () => import('../../locales/fr.json'),
    first: () => import('../../locales/fr.json?first'),
  },
  de: {
    name: 'Deutsch',
    runs: 'ltr',
    whole: () => import('../../locales/de.json'),
    first: () => import('../../locales/de.json?first'),
  },
  ja: {
    name: '日本語',
    runs: 'ltr',
    whole: () => import('../../locales/ja.json'),
    first: () => import('../../locales/ja.json?first'),
  },
  ar: {
    name: 'العربية',
    runs: 'rtl',
    whole: () => import('../../locales/ar.json'),
    first: () => import('../../locales/ar.json?first'),
  },
} as const satisfies Record<string, Row>;

type Row = { readonly name: string; readonly runs: Direction } & { readonly [P in Share]: () => Fetched };

/** All the words, or those of the first screen. */
export type Share = 'whole' | 'first';

export type LocaleId = keyof typeof files;
export const locales = Object.keys(files) as readonly LocaleId[];

/** What a language calls itself, for whoever reads no other. */
export const ownName = (id: LocaleId): string => files[id].name;

/** The language every other one falls back to. */
export const SOURCE_LOCALE: LocaleId = 'en';

/**
 * A BCP 47 tag that is safe to give to anything, out of whatever a store, a browser or an address says: well formed,
 * canonical, without extensions (`en_US` gives `en-US`), of a language there are words for; else null.
 */
export function readTag(said: unknown): string | null {
  if (typeof said !== 'string' || said.length > LONGEST_TAG) return null;
  try {
    const { baseName, language } = new Intl.Locale(said.trim().replaceAll('_', '-'));
    return locales.some((each) => each === language) ? baseName : null;
  } catch {
    return null;
  }
}

/** No tag for a language, a script and a territory comes near. */
const LONGEST_TAG = 60;

/** The language we have that serves a tag best: `en-GB` gives `en`, one we lack gives `en`. */
export function nearestLocale(tag: string): LocaleId {
  const known = readTag(tag);
  return locales.find((id) => known === id || known?.startsWith(`${id}-`)) ?? SOURCE_LOCALE;
}

/** Which way the words of a tag run. */
export const directionOf = (tag: string): Direction => files[nearestLocale(tag)].runs;

export async function wordsOf(locale: LocaleId, share: Share): Promise<Sentences> {
  return (await files[locale][share]()).default;
}
