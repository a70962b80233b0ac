import { useEffect, useState } from 'preact/hooks';
import type { Say } from '../../body';
import { createSay, directionOf } from '../../words';
import { noteHappening } from '../shared/trouble/happened';

type InLanguage = { readonly say: Say; readonly locale: string };

/** Words in the language chosen; the page says which it is and which way it runs. */
export function useLanguage(locale: string, first: InLanguage): Say {
  const [words, setWords] = useState(first);
  useEffect(() => {
    if (words.locale !== locale) createSay(locale).then((say) => setWords({ say, locale }), noteHappening);
  }, [locale, words.locale]);
  useEffect(() => {
    document.documentElement.lang = words.locale;
    document.documentElement.dir = directionOf(words.locale);
  }, [words.locale]);
  return words.say;
}
