import i18next, { type i18n } from 'i18next';
import type { Say } from '../body';
import { apart } from './apart';
import { formats } from './formats';
import { directionOf, type LocaleId, nearestLocale, readTag, type Share, SOURCE_LOCALE, wordsOf } from './locales';

/**
 * A `Say` for a BCP 47 tag, e.g. `en-GB`: words from the nearest language we have, numbers and dates as the tag itself
 * writes them. `say('print.page', { page: 2, pages: 5 })`; where words hold a length, its unit is the value `unit`
 * ('in' or 'cm'); a plural goes by the value `count`. A code without words comes back as it is.
 */
export async function createSay(tag: string): Promise<Say> {
  return sayWith(await speaker(tag, 'whole'));
}

/** A `Say` that knows the words of the first screen at once, and all others once `learn` has fetched them. */
export type Learner = { readonly say: Say; readonly learn: () => Promise<void> };

export async function createLearner(tag: string): Promise<Learner> {
  const speaking = await speaker(tag, 'first');
  const learn = async () => {
    for (const [id, words] of await fetched(tag, 'whole'))
      speaking.addResourceBundle(id, 'translation', words, true, true);
  };
  return { say: sayWith(speaking), learn };
}

function sayWith(speaking: i18n): Say {
  const direction = directionOf(speaking.language);
  return (code, values = {}) => speaking.t(code, apart(values, direction));
}

async function speaker(tag: string, share: Share): Promise<i18n> {
  const locale = nearestLocale(tag);
  const known = await fetched(tag, share);
  const speaking = i18next.createInstance();
  await speaking.init({
    lng: readTag(tag) ?? locale,
    fallbackLng: SOURCE_LOCALE,
    resources: Object.fromEntries(known.map(([id, translation]) => [id, { translation }])),
    interpolation: { escapeValue: false },
  });
  for (const [name, format] of Object.entries(formats))
    speaking.services.formatter?.add(name, (value, language, options) => format(value, language ?? locale, options));
  return speaking;
}

/** The words of a tag's language, and of the one it falls back to. */
function fetched(tag: string, share: Share) {
  const ids: readonly LocaleId[] = [...new Set([nearestLocale(tag), SOURCE_LOCALE])];
  return Promise.all(ids.map(async (id) => [id, await wordsOf(id, share)] as const));
}
