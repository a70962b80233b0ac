// The words: every language says what English says, and every code that the app says has words.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { modulesOf, walk } from './syntax.mjs';

const SOURCE = 'en';
const CATEGORIES = ['zero', 'one', 'two', 'few', 'many', 'other'];
const PLURAL = new RegExp(`_(${CATEGORIES.join('|')})$`);
/** Forms that stand for one certain number in some languages, and may leave the number unsaid. */
const MAY_LEAVE_OUT_COUNT = /_(zero|one|two)$/;

/**
 * One line for each code without words, words without use, and language that says more or less than English.
 * @param {string} root
 * @returns {string[]}
 */
export function localeBreaches(root) {
  const languages = new Map(
    readdirSync(join(root, 'locales'))
      .filter((name) => name.endsWith('.json'))
      .map((name) => [
        name.slice(0, -'.json'.length),
        flatten(JSON.parse(readFileSync(join(root, 'locales', name), 'utf8'))),
      ]),
  );
  const english = languages.get(SOURCE);
  if (!english) return [`locales/${SOURCE}.json is missing`];
  return [
    ...[...languages].flatMap(([language, words]) => differences(language, words, english)),
    ...codeBreaches(root, new Set([...english.keys()].map(codeOf))),
  ];
}

/** @typedef {Map<string, string>} Words by dotted key */

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
  const like = isPlural(key, english) ? undefined : english.get(key);
  const wanted = valuesIn(like ?? english.get(`${codeOf(key)}_other`) ?? '');
  const used = valuesIn(text);
  if (MAY_LEAVE_OUT_COUNT.test(key) && like === undefined) used.add('count');
  return used.size === wanted.size && [...used].every((name) => wanted.has(name));
}

/** @param {string} text @returns {Set<string>} the names between double braces */
function valuesIn(text) {
  return new Set([...text.matchAll(/\{\{\s*([\w.-]+)/g)].map((found) => found[1] ?? ''));
}

/** @param {string} root @param {Set<string>} codes */
function codeBreaches(root, codes) {
  /** @type {string[]} */
  const found = [];
  const texts = new Set();
  /** @type {RegExp[]} */
  const patterns = [];
  for (const { path, program } of modulesOf(root, ['app'])) {
    walk(program, (node) => {
      if (node.type === 'Literal' && typeof node.value === 'string') texts.add(node.value);
      if (node.type === 'TemplateLiteral') patterns.push(patternOf(node));
      if (!isSaying(node)) return;
      for (const pattern of saidIn(node.arguments[0])) {
        if (![...codes].some((code) => pattern.test(code)))
          found.push(`${path}: no words for ${pattern.source.slice(1, -1)}`);
      }
    });
  }
  const open = patterns.filter((pattern) => !/^\^\.[+]/.test(pattern.source));
  const unused = [...codes].filter((code) => !texts.has(code) && !open.some((pattern) => pattern.test(code)));
  return [...found, ...unused.map((code) => `locales/${SOURCE}.json: nothing says ${code}`)];
}

function isSaying(/** @type {any} */ node) {
  return node.type === 'CallExpression' && (node.callee.name ?? node.callee.property?.name) === 'say';
}

/** The codes an argument may be, as patterns; a plain variable says nothing here. @param {any} node @returns {RegExp[]} */
function saidIn(node) {
  if (node?.type === 'ConditionalExpression') return [...saidIn(node.consequent), ...saidIn(node.alternate)];
  if (node?.type === 'TemplateLiteral') return [patternOf(node)];
  return node?.type === 'Literal' && typeof node.value === 'string' ? [new RegExp(`^${escaped(node.value)}$`)] : [];
}

/** @param {any} node a template literal; each hole stands for anything */
function patternOf(node) {
  return new RegExp(`^${node.quasis.map((/** @type {any} */ part) => escaped(part.value.cooked ?? '')).join('.+')}$`);
}

/** @param {string} text */
const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
