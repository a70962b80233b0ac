// Who may import whom: the table of rooms as data, and the reading of the code against it.
import { dirname, relative, resolve, sep } from 'node:path';
import { modulesOf, walk } from './syntax.mjs';

/** Every room, and the rooms (or single modules) of ours it may import. `null`: all of them. */
export const ROOMS = {
  'app/body': [],
  'app/drafting': ['app/body'],
  'app/measuring': ['app/body'],
  'app/storage': ['app/body'],
  'app/sharing': ['app/body'],
  'app/words': ['app/body'],
  'app/work': ['app/body', 'app/drafting', 'app/words', 'app/sharing'],
  'app/command': ['app/body', 'app/drafting', 'app/measuring', 'app/sharing', 'app/words', 'app/work'],
  'app/parts': ['app/body', 'app/measuring', 'app/words', 'app/work/bridge'],
  'app/screens': null,
  sw: ['app/sharing/inbox'],
  app: null,
};

/** A folder is entered by its index; these few modules are doors beside it, so that who needs one does not load the room. */
export const SIDE_DOORS = [
  'app/drafting/draft',
  'app/drafting/draft-types',
  'app/drafting/garments',
  'app/drafting/sheets',
  'app/drafting/output',
  'app/work/bridge',
  'app/work/keep-offline',
  'app/sharing/inbox',
];

/** Every package the app uses, and the only places that may name it. */
export const PACKAGES = {
  preact: ['app/parts', 'app/screens', 'app/main'],
  i18next: ['app/words'],
  valibot: ['app/body', 'app/sharing', 'app/storage', 'app/command'],
  dexie: ['app/storage'],
  idb: ['app/sharing/inbox'],
  'bezier-js': ['app/drafting/geometry'],
  'clipper2-ts': ['app/drafting/geometry'],
  jspdf: ['app/drafting/output'],
  qr: ['app/sharing'],
  uqr: ['app/sharing'],
  'workbox-precaching': ['sw'],
  'workbox-routing': ['sw'],
  'workbox-window': ['app/screens', 'app/work'],
  node: ['app/command'],
};

/** What the first page may not reach through static imports: each waits for a dynamic import or the worker. */
export const NOT_ON_FIRST_PAGE = ['app/drafting', 'jspdf', 'clipper2-ts', 'bezier-js', 'qr', 'uqr'];
export const FIRST_PAGE = 'app/main.tsx';

/** Rooms where the clock and chance are handed in, so that the same input gives the same output. */
export const PURE = ['app/body', 'app/drafting', 'app/measuring'];

const inside = (/** @type {string} */ path, /** @type {string} */ place) =>
  path === place || path.startsWith(`${place}/`) || path.replace(/\.tsx?$/, '') === place;

/**
 * Reads every module below `root` and returns one line for each breach of the tables above; none when the house is in order.
 * @param {string} root
 * @returns {string[]}
 */
export function breachesOf(root) {
  const modules = modulesOf(root, ['app', 'sw']).map((module) => readModule(root, module));
  const known = new Set(modules.map((module) => module.path));
  return [
    ...modules.flatMap((module) => [...wrongImports(module, known), ...impurities(module)]),
    ...firstPageBreaches(new Map(modules.map((module) => [module.path, module])), known),
  ];
}

/** @typedef {{ from: string, target: string, kind: 'static' | 'type' | 'lazy' }} Import `target`: a path of ours or a package */
/** @typedef {{ path: string, imports: Import[], impure: string[] }} Module */

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

/** @param {Module} module @param {Set<string>} known */
function wrongImports({ path, imports }, known) {
  const room = roomOf(path);
  return imports.flatMap(({ from, target }) => {
    if (!from.startsWith('.')) {
      const places = PACKAGES[/** @type {keyof typeof PACKAGES} */ (target)];
      return places?.some((place) => inside(path, place)) ? [] : [`${path}: the package ${target} has no place here`];
    }
    const allowed = ROOMS[/** @type {keyof typeof ROOMS} */ (room)];
    if (!/^(app|sw)\//.test(target)) {
      return /^(assets|locales)\/|^package\.json$/.test(target) ? [] : [`${path}: ${target} is not part of the app`];
    }
    const free = allowed === null || [room, ...allowed].some((place) => inside(target, place));
    if (!free) return [`${path}: ${room} may not import ${target}`];
    return roomOf(target) === room || isDoor(target, known)
      ? []
      : [`${path}: ${target} is not a door of ${roomOf(target)}`];
  });
}

/** @param {string} target @param {Set<string>} known */
function isDoor(target, known) {
  const name = target.replace(/\.tsx?$/, '').replace(/\/index$/, '');
  return name === roomOf(name) || known.has(`${name}/index.ts`) || SIDE_DOORS.includes(name) || name.endsWith('.css');
}

/** @param {Module} module */
function impurities({ path, impure }) {
  return PURE.includes(roomOf(path)) ? impure.map((found) => `${path}: ${found} in a room that must be pure`) : [];
}

/** @param {Map<string, Module>} modules @param {Set<string>} known */
function firstPageBreaches(modules, known) {
  /** @type {Map<string, string>} reached, and by what chain */
  const reached = new Map([[FIRST_PAGE, FIRST_PAGE]]);
  /** @type {string[]} */
  const found = [];
  for (const [path, chain] of reached) {
    for (const { target, kind } of modules.get(path)?.imports ?? []) {
      if (kind !== 'static') continue;
      const file =
        [target, `${target}.ts`, `${target}.tsx`, `${target}/index.ts`].find((name) => known.has(name)) ?? target;
      if (NOT_ON_FIRST_PAGE.some((heavy) => inside(file, heavy))) found.push(`first page reaches ${file}: ${chain}`);
      else if (!reached.has(file)) reached.set(file, `${chain} > ${file}`);
    }
  }
  return found;
}

/** @param {string} path */
function roomOf(path) {
  const [top = '', next = ''] = path.split('/');
  return `${top}/${next}` in ROOMS ? `${top}/${next}` : top;
}

function isClockOrChance(/** @type {any} */ node) {
  const callee = node.callee;
  if (node.type === 'NewExpression') return callee.name === 'Date' && node.arguments.length === 0;
  if (node.type !== 'CallExpression' || callee.type !== 'MemberExpression') return false;
  return ['Math.random', 'Date.now'].includes(`${callee.object.name}.${callee.property.name}`);
}
