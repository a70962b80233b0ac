/** What a language file holds: words by dotted name, as deep as needed. */
export type Words = { readonly [name: string]: string | Words };

/** One row a language: how its file is fetched. Adding a language is adding a row and the file. */
const files = {
  en: () => import('../../locales/en.json'),
} as const satisfies Record<string, () => Promise<{ readonly default: Words }>>;

export type LocaleId = keyof typeof files;
export const locales = Object.keys(files) as readonly LocaleId[];

/** The language every other one falls back to. */
export const SOURCE_LOCALE: LocaleId = 'en';

/** The language we have that serves a BCP 47 tag best: `en-GB` gives `en`, one we lack gives `en`. */
export function nearestLocale(tag: string): LocaleId {
  const wanted = tag.toLowerCase();
  return locales.find((id) => wanted === id || wanted.startsWith(`${id}-`)) ?? SOURCE_LOCALE;
}

export async function wordsOf(locale: LocaleId): Promise<Words> {
  return (await files[locale]()).default;
}
