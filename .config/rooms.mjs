// Who may import whom: the table of rooms as data, and the reading of the code against it.
import { climbs } from './floors.mjs';
import { fileOf, readModules } from './imports.mjs';
import { ringsOf } from './rings.mjs';

/** Every room, and the rooms (or single modules) of ours it may import. `null`: all of them. */
export const ROOMS = {
  'app/body': [],
  'app/drafting': ['app/body'],
  'app/measuring': ['app/body'],
  'app/dressed': ['app/body', 'app/drafting/draft-types', 'app/drafting/outfit', 'app/measuring'],
  'app/picture': [],
  'app/storage': ['app/body', 'app/picture', 'app/work/trusted-address'],
  'app/sharing': ['app/body', 'app/picture'],
  'app/words': ['app/body'],
  'app/work': ['app/body', 'app/drafting', 'app/words'],
  'app/command': ['app/body', 'app/drafting', 'app/measuring', 'app/sharing', 'app/words'],
  'app/parts': ['app/body', 'app/drafting/catalogue', 'app/measuring'],
  'app/screens': null,
  'app/watchdog': ['app/storage/backup/format', 'app/storage/plain'],
  sw: ['app/sharing/inbox'],
  app: null,
};

/** A folder is entered by its index; these few modules are doors beside it, so that who needs one does not load the room. */
export const SIDE_DOORS = [
  'app/body/point',
  'app/drafting/draft',
  'app/drafting/draft-types',
  'app/drafting/faces',
  'app/drafting/garments',
  'app/drafting/catalogue',
  'app/drafting/cloth',
  'app/drafting/guide',
  'app/drafting/outfit',
  'app/drafting/sheets',
  'app/drafting/output',
  'app/drafting/pencil',
  'app/drafting/told',
  'app/work/bridge',
  'app/work/keep-offline',
  'app/work/trusted-address',
  'app/storage/typed',
  'app/sharing/inbox',
  'app/storage/backup/format',
  'app/storage/plain',
];

/**
 * Rooms with an order of their own: what each folder (or module) may import of the same room beside itself. `*`: every
 * folder not named; `null`: all of the room.
 */
export const INSIDE = {
  'app/screens': {
    index: ['shell'],
    shell: ['shared'],
    'shell/screens': null,
    'shell/use-screen': ['shared', 'toys'],
    shared: [],
    '*': ['shared'],
  },
};

/** Every package the app uses, and the only places that may name it. */
export const PACKAGES = {
  preact: ['app/parts', 'app/screens'],
  i18next: ['app/words'],
  valibot: ['app/sharing', 'app/storage', 'app/command'],
  dexie: ['app/storage'],
  idb: ['app/sharing/inbox'],
  'clipper2-ts': ['app/drafting/geometry'],
  jspdf: ['app/drafting/output'],
  fontkit: ['app/drafting/faces'],
  'bidi-js': ['app/drafting/faces'],
  '@expo-google-fonts/noto-sans': ['app/work'],
  '@expo-google-fonts/vazirmatn': ['app/work'],
  '@expo-google-fonts/noto-sans-jp': ['app/work'],
  qr: ['app/sharing'],
  'workbox-window': ['app/work'],
  node: ['app/command'],
};

/** What a module may not reach through static imports: each waits for a dynamic import or the worker. */
export const LIGHT = {
  'first page': { from: 'app/main.tsx', without: ['app/drafting', 'jspdf', 'fontkit', 'clipper2-ts', 'qr'] },
  // Choosing a garment loads no block.
  catalogue: {
    from: 'app/drafting/catalogue.ts',
    without: ['app/drafting/blocks', 'app/drafting/garments', 'app/drafting/rows', 'app/drafting/geometry'],
  },
};
/** Where screens may load drafting from: what may be ordered, several garments as one, the sewing, and paper. The rest is the worker's. */
export const LOADED_BY_SCREENS = [
  'app/drafting/catalogue',
  'app/drafting/guide',
  'app/drafting/outfit',
  'app/drafting/pencil',
  'app/drafting/sheets',
  'app/drafting/told',
];

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
  const modules = readModules(root, ['app', 'sw']);
  const known = new Set(modules.map((module) => module.path));
  return [
    ...modules.flatMap((module) => [
      ...wrongImports(module, known),
      ...insideBreaches(module),
      ...climbs(module),
      ...loadedByScreens(module),
      ...impurities(module),
    ]),
    ...heavyBreaches(new Map(modules.map((module) => [module.path, module])), known),
    ...idlePermissions(modules),
    ...ringsOf(modules, known).map((ring) => `a ring of imports: ${ring.join(' > ')}`),
  ];
}

/** @typedef {import('./imports.mjs').Module} Module */

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

/** @param {Module} module */
function insideBreaches({ path, imports }) {
  const room = roomOf(path);
  /** @type {Record<string, string[] | null> | undefined} */
  const order = INSIDE[/** @type {keyof typeof INSIDE} */ (room)];
  if (!order) return [];
  const within = (/** @type {string} */ name) => name.slice(room.length + 1).replace(/\.tsx?$/, '');
  const folderOf = (/** @type {string} */ name) => within(name).split('/')[0] ?? '';
  const [own, name] = [folderOf(path), [within(path), folderOf(path), '*'].find((each) => each in order)];
  const allowed = order[name ?? ''] ?? null;
  if (allowed === null) return [];
  return imports
    .filter(({ target }) => target.startsWith(`${room}/`) && ![own, ...allowed].includes(folderOf(target)))
    .map(({ target }) => `${path}: ${own} may not import ${target}`);
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

/** What the tables allow and nobody does any more. @param {Module[]} modules */
function idlePermissions(modules) {
  const imported = (/** @type {string} */ place, /** @type {string} */ what) =>
    modules.some(({ path, imports }) => inside(path, place) && imports.some(({ target }) => inside(target, what)));
  const idle = (/** @type {Record<string, string[] | null>} */ table) =>
    Object.entries(table).flatMap(([one, others]) => (others ?? []).map((other) => [one, other]));
  return [
    ...idle(ROOMS).filter(([room = '', other = '']) => !imported(room, other)),
    ...idle(PACKAGES).flatMap(([name = '', place = '']) => (imported(place, name) ? [] : [[place, name]])),
  ].map(([place, what]) => `${place} may import ${what}, and does not`);
}

/** @param {Map<string, Module>} modules @param {Set<string>} known */
function heavyBreaches(modules, known) {
  return Object.entries(LIGHT).flatMap(([name, { from, without }]) => {
    /** @type {Map<string, string>} reached, and by what chain */
    const reached = new Map([[from, from]]);
    /** @type {string[]} */
    const found = [];
    for (const [path, chain] of reached) {
      for (const { target, kind } of modules.get(path)?.imports ?? []) {
        if (kind !== 'static') continue;
        const file = fileOf(target, known) ?? target;
        if (without.some((heavy) => inside(file, heavy))) found.push(`${name} reaches ${file}: ${chain}`);
        else if (!reached.has(file)) reached.set(file, `${chain} > ${file}`);
      }
    }
    return found;
  });
}

/** Screens may name drafting's types, and load what may be ordered; they draft through the worker alone. @param {Module} module */
function loadedByScreens({ path, imports }) {
  if (roomOf(path) !== 'app/screens') return [];
  return imports
    .filter(({ target, kind }) => kind !== 'type' && inside(target, 'app/drafting'))
    .filter(({ target }) => !LOADED_BY_SCREENS.some((door) => inside(target, door)))
    .map(({ target }) => `${path}: ${target} is the worker's to load`);
}

/** @param {string} path */
function roomOf(path) {
  const [top = '', next = ''] = path.split('/');
  return `${top}/${next}` in ROOMS ? `${top}/${next}` : top;
}
