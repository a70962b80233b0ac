// The words: every language says what English says, and every code that the app says has words.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { languageFiles, NOTES } from './languages.mjs';
import { modulesOf, walk } from './syntax.mjs';

const SOURCE = 'en';
const CATEGORIES = ['zero', 'one', 'two', 'few', 'many', 'other'];
const PLURAL = new RegExp(`_(${CATEGORIES.join('|')})$`);
/** Stands for what a template puts in; no code has one. */
const HOLE = '\u0000';
const CODE = new RegExp(`^[a-z][a-z0-9-]*(\\.[a-z0-9${HOLE}-]+)+$`);
/** Forms that stand for one certain number in some languages: they may leave values unsaid. */
const MAY_SAY_LESS = /_(zero|one|two)$/;
/** By language: what may not stand in it, since a line could end there and leave a mark alone. */
const PARTED = new Map([['fr', /[^\S\u00a0\u202f][:;?!»]|«[^\S\u00a0\u202f]/]]);

/**
 * One line for each code without words, words without use, and language that says more or less than English.
 * @param {string} root
 * @returns {string[]}
 */
export function localeBreaches(root) {
  const languages = new Map(
    languageFiles(root).map((name) => [name.slice(0, -'.json'.length), flatten(read(root, name))]),
  );
  const english = languages.get(SOURCE);
  if (!english) return [`locales/${SOURCE}.json is missing`];
  return [
    ...[...languages].flatMap(([language, words]) => differences(language, words, english)),
    ...strayNotes(root, [...english.keys()].map(codeOf)),
    ...codeBreaches(root, new Set([...english.keys()].map(codeOf))),
  ];
}

/** @typedef {Map<string, string>} Words by dotted key */

/** @param {string} root @param {string} name @returns {Record<string, unknown>} */
const read = (root, name) => JSON.parse(readFileSync(join(root, 'locales', name), 'utf8'));

/** Notes for who translates, of a code or of a whole topic that there are no words for. @param {string} root @param {string[]} codes */
function strayNotes(root, codes) {
  if (!existsSync(join(root, 'locales', NOTES))) return [];
  return Object.keys(read(root, NOTES))
    .filter((noted) => !codes.some((code) => code === noted || code.startsWith(`${noted}.`)))
    .map((noted) => `locales/${NOTES}: nothing is called ${noted}`);
}

/** @param {Record<string, unknown>} tree @param {string} before @returns {Words} */
function flatten(tree, before = '') {
  return new Map(
    Object.entries(tree).flatMap(([key, value]) =>
      value !== null && typeof value === 'object'
        ? [...flatten(/** @type {Record<string, unknown>} */ (value), `${before}${key}.`)]
        : [/** @type {const} */ ([before + key, String(value)])],
    ),
  );
}

/** @param {string} key */
const codeOf = (key) => key.replace(PLURAL, '');

/** @param {string} language @param {Words} words @param {Words} english */
function differences(language, words, english) {
  const wanted = new Set([...english.keys()].flatMap((key) => formsIn(language, key, english)));
  const say = (/** @type {string} */ wrong) => `locales/${language}.json: ${wrong}`;
  return [
    ...[...wanted].filter((key) => !words.has(key)).map((key) => say(`no words for ${key}`)),
    ...[...words.keys()].filter((key) => !wanted.has(key)).map((key) => say(`${key} is not in English`)),
    ...[...words].filter(([, text]) => text.trim() === '').map(([key]) => say(`${key} is empty`)),
    ...[...words]
      .filter(([key, text]) => wanted.has(key) && !sameValues(key, text, english))
      .map(([key]) => say(`${key} uses other values than English`)),
    ...[...words]
      .filter(([, text]) => PARTED.get(language)?.test(text))
      .map(([key]) => say(`${key} parts a mark from its word by a space that may break`)),
  ];
}

/** The forms a language needs of one English key: itself, or one for each of the language's own plurals. @param {string} language @param {string} key @param {Words} english */
function formsIn(language, key, english) {
  if (!isPlural(key, english)) return [key];
  const { pluralCategories } = new Intl.PluralRules(language).resolvedOptions();
  return pluralCategories.map((category) => `${codeOf(key)}_${category}`);
}

/** @param {string} key @param {Words} english */
const isPlural = (key, english) => PLURAL.test(key) && english.has(`${codeOf(key)}_other`);

/** @param {string} key @param {string} text @param {Words} english */
function sameValues(key, text, english) {
  const plural = isPlural(key, english);
  const wanted = valuesIn(english.get(plural ? `${codeOf(key)}_other` : key) ?? '');
  const used = valuesIn(text);
  const enough = used.size === wanted.size || (plural && MAY_SAY_LESS.test(key));
  return enough && [...used].every((name) => wanted.has(name));
}

/** @param {string} text @returns {Set<string>} the names between double braces */
function valuesIn(text) {
  return new Set([...text.matchAll(/\{\{\s*([\w.-]+)/g)].map((found) => found[1] ?? ''));
}

/** @param {string} root @param {Set<string>} codes */
function codeBreaches(root, codes) {
  const topics = new Set([...codes].filter((code) => code.includes('.')).map((code) => code.replace(/\..*/, '')));
  /** @type {string[]} */
  const found = [];
  const texts = new Set();
  /** @type {RegExp[]} */
  const patterns = [];
  for (const { path, program } of modulesOf(root, ['app'])) {
    /** @type {Set<string>} alternatives, parted by spaces */
    const wanted = new Set();
    walk(program, (node) => {
      const code = codeIn(node);
      if (node.type === 'Literal') texts.add(code);
      if (node.type === 'TemplateLiteral' && !code?.startsWith(HOLE)) patterns.push(patternOf(code ?? ''));
      if (code && isAbout(topics, code)) wanted.add(code);
      for (const said of sayingsOf(node)) wanted.add(said);
    });
    for (const alternatives of wanted) {
      const patternsOf = alternatives.split(' ').map(patternOf);
      const known = [...codes].some((code) => patternsOf.some((pattern) => pattern.test(code)));
      if (!known) found.push(`${path}: no words for ${alternatives.replace(/ .*/, '').replaceAll(HOLE, '*')}`);
    }
  }
  const unused = [...codes].filter((code) => !texts.has(code) && !patterns.some((pattern) => pattern.test(code)));
  return [...found, ...unused.map((code) => `locales/${SOURCE}.json: nothing says ${code}`)];
}

/** The codes that `say(code)` says, and the alternatives, in one text, that `sayFirst(say, [code, code])` tries. @param {any} node @returns {string[]} */
function sayingsOf(node) {
  if (node.type !== 'CallExpression') return [];
  const name = node.callee.name ?? node.callee.property?.name;
  if (name === 'say') return codesSaid(node.arguments[0]);
  if (name !== 'sayFirst') return [];
  const alternatives = (node.arguments[1]?.elements ?? []).flatMap(codesSaid);
  return alternatives.length > 0 ? [alternatives.join(' ')] : [];
}

/** The codes an argument may be; a plain variable says nothing here. @param {any} node @returns {string[]} */
function codesSaid(node) {
  if (node?.type === 'ConditionalExpression') return [...codesSaid(node.consequent), ...codesSaid(node.alternate)];
  return [codeIn(node) ?? []].flat();
}

/** The text of a literal, with a mark where a template has a hole. @param {any} node @returns {string | undefined} */
function codeIn(node) {
  if (node?.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node?.type !== 'TemplateLiteral') return undefined;
  return node.quasis.map((/** @type {any} */ part) => part.value.cooked ?? '').join(HOLE);
}

/** Whether a text anywhere in the code is a code: it begins with a topic of the words. @param {Set<string>} topics @param {string} text */
function isAbout(topics, text) {
  return CODE.test(text) && topics.has(text.replace(/\..*/, ''));
}

/** Each hole stands for anything. @param {string} code */
function patternOf(code) {
  return new RegExp(`^${code.split(HOLE).map(escaped).join('.+')}$`);
}

/** @param {string} text */
const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
