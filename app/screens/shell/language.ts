import { useEffect, useState } from 'preact/hooks';
import type { Say } from '../../body';
import { createSay } from '../../words';
import { noteHappening } from '../shared/trouble/happened';

type InLanguage = { readonly say: Say; readonly locale: string };

/** Languages written from right to left, among those that soft-toy makers may choose. */
const RIGHT_TO_LEFT = ['ar', 'fa', 'he', 'ur'];

/** Words in the language chosen; the page says which it is and which way it runs. */
export function useLanguage(locale: string, first: InLanguage): Say {
  const [words, setWords] = useState(first);
  useEffect(() => {
    if (words.locale !== locale) createSay(locale).then((say) => setWords({ say, locale }), noteHappening);
  }, [locale, words.locale]);
  useEffect(() => {
    const { language } = new Intl.Locale(words.locale);
    document.documentElement.lang = words.locale;
    document.documentElement.dir = RIGHT_TO_LEFT.includes(language) ? 'rtl' : 'ltr';
  }, [words.locale]);
  return words.say;
}
