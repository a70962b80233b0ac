import i18next from 'i18next';
import type { Say } from '../body';
import { formats } from './formats';
import { nearestLocale, SOURCE_LOCALE, wordsOf } from './locales';

/**
 * A `Say` for a BCP 47 tag, e.g. `en-GB`: words from the nearest language we have, numbers and dates as the tag itself
 * writes them. `say('print.page', { page: 2, pages: 5 })`; where words hold a length, its unit is the value `unit`
 * ('in' or 'cm'); a plural goes by the value `count`. A code without words comes back as it is.
 */
export async function createSay(tag: string): Promise<Say> {
  const locale = nearestLocale(tag);
  const ids = [...new Set([locale, SOURCE_LOCALE])];
  const entries = await Promise.all(ids.map(async (id) => [id, { translation: await wordsOf(id) }] as const));
  const i18n = i18next.createInstance();
  await i18n.init({
    lng: tag.toLowerCase().startsWith(locale) ? tag : locale,
    fallbackLng: SOURCE_LOCALE,
    resources: Object.fromEntries(entries),
    interpolation: { escapeValue: false },
  });
  for (const [name, format] of Object.entries(formats)) {
    i18n.services.formatter?.add(name, (value, language, options) => format(value, language ?? locale, options));
  }
  return (code, values) => i18n.t(code, { ...values });
}
