// The words of the trade: every language has one for each term of the English list, says it where English does, and names
// who says it so.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { languageFiles } from './languages.mjs';

const SOURCE = 'en';
/** What parts the ways of saying a term: a comma of any script, a bracket, a slash. */
const BETWEEN = /[,、،;；/()（）]/;
/** The Arabic article, which comes and goes with the sentence. */
const ARTICLE = /(^|\s)ال/g;

/**
 * One line for each term that a language has no word for, does not use where English does, or names no source of.
 * @param {string} root
 * @returns {string[]}
 */
export function glossaryBreaches(root) {
  const terms = rowsOf(root, SOURCE).map(([term = '', , , key = '']) => ({ term, key: key.replaceAll('`', '') }));
  const languages = languageFiles(root).map((name) => name.slice(0, -'.json'.length));
  return [
    ...terms
      .filter(({ term, key }) => !says(textOf(root, SOURCE, key), term))
      .map(({ term, key }) => `locales/glossary/${SOURCE}.md: ${term} is not what ${key} says`),
    ...languages
      .filter((language) => language !== SOURCE)
      .flatMap((language) => {
        const rows = new Map(rowsOf(root, language).map((row) => [row[0], row]));
        return terms
          .map(({ term, key }) => wrongIn(rows.get(term), term, textOf(root, language, key)))
          .filter((wrong) => wrong !== '')
          .map((wrong) => `locales/glossary/${language}.md: ${wrong}`);
      }),
  ];
}

/** @param {string[] | undefined} row @param {string} term @param {string} text */
function wrongIn(row, term, text) {
  if (!row) return `no word for ${term}`;
  const [, words = ''] = row;
  if (!words.split(BETWEEN).some((word) => word.trim() !== '' && says(text, word)))
    return `${words} (${term}) is not what is said: ${text}`;
  return row.at(-1) === '' ? `nobody is named who says ${words}` : '';
}

/** @param {string} text @param {string} word */
const says = (text, word) => folded(text).includes(folded(word));

/** @param {string} text */
const folded = (text) => text.normalize('NFC').toLowerCase().replace(ARTICLE, '$1').trim();

/** The rows of all tables of a glossary, without their heads. @param {string} root @param {string} language @returns {string[][]} */
function rowsOf(root, language) {
  const path = join(root, 'locales/glossary', `${language}.md`);
  if (!existsSync(path)) return [];
  const lines = readFileSync(path, 'utf8').split('\n');
  return lines
    .filter((line, at) => line.startsWith('|') && !isRule(line) && !isRule(lines[at + 1] ?? ''))
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

/** @param {string} line */
const isRule = (line) => /^\|[\s|:-]+\|$/.test(line);

/** @param {string} root @param {string} language @param {string} key @returns {string} the words of a key, none if there are none */
function textOf(root, language, key) {
  /** @type {unknown} */
  let found = JSON.parse(readFileSync(join(root, 'locales', `${language}.json`), 'utf8'));
  for (const part of key.split('.')) found = /** @type {Record<string, unknown> | undefined} */ (found)?.[part];
  return typeof found === 'string' ? found : '';
}
