/** What a language file holds: words by dotted name, as deep as needed. */
export type Sentences = { readonly [name: string]: string | Sentences };

type Fetched = Promise<{ readonly default: Sentences }>;

/**
 * One row a language: how its file is fetched, and the few words of it that the first screen says (the build cuts them
 * out, see `.config/first-words.mjs`). Adding a language is adding a row and the file.
 */
const files = {
  en: { whole: () => import('../../locales/en.json'), first: () => import('../../locales/en.json?first') },
} as const satisfies Record<string, { readonly [P in Share]: () => Fetched }>;

/** All the words, or those of the first screen. */
export type Share = 'whole' | 'first';

export type LocaleId = keyof typeof files;
export const locales = Object.keys(files) as readonly LocaleId[];

/** The language every other one falls back to. */
export const SOURCE_LOCALE: LocaleId = 'en';

/** The language we have that serves a BCP 47 tag best: `en-GB` gives `en`, one we lack gives `en`. */
export function nearestLocale(tag: string): LocaleId {
  const wanted = tag.toLowerCase();
  return locales.find((id) => wanted === id || wanted.startsWith(`${id}-`)) ?? SOURCE_LOCALE;
}

export async function wordsOf(locale: LocaleId, share: Share): Promise<Sentences> {
  return (await files[locale][share]()).default;
}
