// Reads what every module imports.
import { dirname, relative, resolve, sep } from 'node:path';
import { modulesOf, walk } from './syntax.mjs';

/** @typedef {{ from: string, target: string, kind: 'static' | 'type' | 'lazy' }} Import `target`: a path of ours or a package */
/** @typedef {{ path: string, imports: Import[], impure: string[] }} Module */

/**
 * Every module below the folders, with what it imports, and where it asks the clock or chance.
 * @param {string} root
 * @param {string[]} folders
 * @returns {Module[]}
 */
export function readModules(root, folders) {
  return modulesOf(root, folders).map((module) => {
    const known = read.get(`${root} ${module.path}`);
    if (known?.source === module.source) return known.module;
    const found = { source: module.source, module: readModule(root, module) };
    read.set(`${root} ${module.path}`, found);
    return found.module;
  });
}

/** What was read before of a file that says the same still. @type {Map<string, { source: string, module: Module }>} */
const read = new Map();

/** The file that an import without an ending means, if it is one of ours. @param {string} target @param {Set<string>} known */
export const fileOf = (target, known) =>
  [target, `${target}.ts`, `${target}.tsx`, `${target}/index.ts`].find((name) => known.has(name));

/** @param {string} root @param {ReturnType<typeof modulesOf>[number]} module @returns {Module} */
function readModule(root, { path, source, program }) {
  /** @type {Import[]} */
  const imports = [];
  /** @type {string[]} */
  const impure = [];
  const add = (/** @type {unknown} */ from, /** @type {Import['kind']} */ kind) => {
    if (typeof from === 'string') imports.push({ from, target: targetOf(root, path, from), kind });
  };
  walk(program, (node) => {
    const from = node.source?.value;
    if (node.type === 'ImportExpression') add(from, 'lazy');
    else if (node.type === 'TSImportType') add(from, 'type');
    else if (node.type === 'ImportDeclaration' || node.type.startsWith('Export')) add(from, kindOf(node, from));
    else if (isClockOrChance(node)) impure.push(source.slice(node.start, node.end));
  });
  return { path, imports, impure };
}

/** A worker's module is loaded by address, never with the page that names it. @returns {Import['kind']} */
function kindOf(/** @type {any} */ node, /** @type {unknown} */ from) {
  if (typeof from === 'string' && /\?.*\b(worker|url)\b/.test(from)) return 'lazy';
  const names = node.specifiers ?? [];
  const allTypes = names.length > 0 && names.every((/** @type {any} */ n) => (n.importKind ?? n.exportKind) === 'type');
  return node.importKind === 'type' || node.exportKind === 'type' || allTypes ? 'type' : 'static';
}

/** @param {string} root @param {string} path @param {string} from */
function targetOf(root, path, from) {
  const bare = from.replace(/\?.*$/, '');
  if (bare.startsWith('.'))
    return relative(root, resolve(root, dirname(path), bare))
      .split(sep)
      .join('/');
  if (bare.startsWith('node:')) return 'node';
  return bare
    .split('/')
    .slice(0, bare.startsWith('@') ? 2 : 1)
    .join('/');
}

function isClockOrChance(/** @type {any} */ node) {
  const callee = node.callee;
  if (node.type === 'NewExpression') return callee.name === 'Date' && node.arguments.length === 0;
  if (node.type !== 'CallExpression' || callee.type !== 'MemberExpression') return false;
  return ['Math.random', 'Date.now'].includes(`${callee.object.name}.${callee.property.name}`);
}
