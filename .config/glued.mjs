// No sentence is glued together in code, no number or day written but where all are, no list joined and no names sorted but as a language does it.
import { modulesOf, walk } from './syntax.mjs';

/** What a machine reads, or whoever works on Hemling: lines of the command, and its page of pieces. */
const NOT_FOR_MAKERS = /^app\/command\//;
/** Where numbers, days and units are written as a language writes them. */
const WRITES = /^app\/(words|body)\//;
const WRITTEN = ['NumberFormat', 'DateTimeFormat'];
/** Marks that part names or sentences; which ones, and with what space, is the language's. A dot or a dash between is the same in all. */
const PARTING = /[,;:.] $|^ (and|or) $/;

/**
 * One line for each breach.
 * @param {string} root
 * @returns {string[]}
 */
export function gluedSentences(root) {
  return modulesOf(root, ['app'])
    .filter(({ path }) => !NOT_FOR_MAKERS.test(path))
    .flatMap(({ path, source, program }) => {
      /** @type {string[]} */
      const found = [];
      walk(program, (node) => {
        const wrong = wrongWith(node) ?? (WRITES.test(path) ? undefined : writtenHere(node));
        if (wrong) found.push(`${path}:${source.slice(0, node.start).split('\n').length}: ${wrong}`);
      });
      return found;
    });
}

/** @param {any} node @returns {string | undefined} */
function wrongWith(node) {
  if (node.type === 'TemplateLiteral' && node.expressions.some(says)) return 'a sentence glued to what is said';
  if (node.type === 'BinaryExpression' && node.operator === '+' && (says(node.left) || says(node.right)))
    return 'a sentence added to what is said';
  if (node.type !== 'CallExpression') return undefined;
  const name = node.callee.property?.name;
  const [first, second] = node.arguments;
  if (name === 'join' && PARTING.test(first?.value ?? '')) return 'a list joined without its language';
  return name === 'localeCompare' && !second ? 'names sorted without their language' : undefined;
}

/** @param {any} node @returns {string | undefined} */
const writtenHere = ({ type, callee }) =>
  type === 'NewExpression' && callee.object?.name === 'Intl' && WRITTEN.includes(callee.property?.name)
    ? 'a number or a day written outside of app/words'
    : undefined;

/** Whether anything within is words: asked for outside of another call that takes them. @param {any} node */
function says(node) {
  let found = false;
  walk(node, (each) => {
    if (each.type === 'CallExpression' && ['say', 'sayFirst'].includes(each.callee.name)) found = true;
  });
  return found;
}
