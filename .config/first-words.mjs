// The few words the first screen says, cut out of each language file, so that they need not wait for all the others.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { languageFiles } from './languages.mjs';
import { ROOT } from './setup.mjs';

/** Everything the app may say before its first lazily fetched part is there. */
export const FIRST_WORDS = [
  'list',
  'screen.toys',
  'screen.welcome',
  'screen.cleared',
  'screen.update',
  'screen.trouble',
  'screen.happened',
  'screen.close',
  'screen.back',
  'screen.undo',
  'screen.settings.title',
];

/** Loads `locales/xx.json?first`. @type {import('vite').Plugin} */
export const firstWords = {
  name: 'first-words',
  enforce: 'pre',
  load(id) {
    const [, file] = /^(.*\/locales\/[\w-]+\.json)\?first$/.exec(id) ?? [];
    if (!file) return undefined;
    const words = JSON.stringify(firstOf(JSON.parse(readFileSync(file, 'utf8'))));
    return { code: `export default ${words}`, moduleType: 'js' };
  },
};

/**
 * What every language says of one topic, by language and then by code.
 * @param {string} topic without topics below it
 * @returns {Record<string, Record<string, string>>}
 */
export function wordsOf(topic) {
  const languages = languageFiles(ROOT).map((name) => {
    const words = JSON.parse(readFileSync(join(ROOT, 'locales', name), 'utf8'))[topic];
    return [
      name.replace('.json', ''),
      Object.fromEntries(Object.entries(words).map(([code, text]) => [`${topic}.${code}`, text])),
    ];
  });
  return Object.fromEntries(languages);
}

/** @param {Record<string, unknown>} words @param {string} before @returns {Record<string, unknown>} */
function firstOf(words, before = '') {
  return Object.fromEntries(
    Object.entries(words).flatMap(([name, value]) => {
      const code = before + name;
      if (FIRST_WORDS.includes(code)) return [[name, value]];
      const leads = FIRST_WORDS.some((first) => first.startsWith(`${code}.`));
      return leads ? [[name, firstOf(/** @type {Record<string, unknown>} */ (value), `${code}.`)]] : [];
    }),
  );
}
