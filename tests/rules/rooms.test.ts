import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { breachesOf } from '../../.config/rooms.mjs';
import { copyOfTheCode } from './copy';

const copy = copyOfTheCode();
afterAll(copy.remove);

const already = new Set(breachesOf(copy.root));
/** What is found beyond what the tree itself has. */
const breachesWith = (path: string, text: string) =>
  copy.planted(path, text, () => breachesOf(copy.root).filter((found) => !already.has(found)));

describe('the rooms', () => {
  test('are in order', () => expect([...already]).toEqual([]));

  test.each([
    ['body', 'drafting', "import { draft } from '../drafting';"],
    ['drafting', 'storage', "import { open } from '../storage/database';"],
    ['measuring', 'drafting', "export * from '../drafting';"],
    ['storage', 'sharing', "export { readCard } from '../sharing';"],
    ['sharing', 'words', "const words = await import('../words');"],
    ['words', 'drafting', "import type { Draft } from '../drafting/draft-types';"],
    ['words', 'drafting', "export type D = import('../drafting').Draft;"],
    ['work', 'storage', "import '../storage';"],
    ['command', 'screens', "import { route } from '../screens/route';"],
    ['parts', 'work', "import { keepOffline } from '../work/keep-offline';"],
    ['parts', 'drafting', "import { draft } from '../drafting';"],
  ])('app/%s may not import app/%s by %s', (room, other, text) => {
    const found = breachesWith(`app/${room}/planted.ts`, text);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(`app/${room}/planted.ts: app/${room} may not import app/${other}`);
  });

  test('are not allowed what they do not do', () => {
    const path = 'app/work/keep-offline.ts';
    const text = readFileSync(join(copy.root, path), 'utf8').replace("import('workbox-window')", 'import(name)');
    expect(breachesWith(path, text)).toEqual(['app/work may import workbox-window, and does not']);
  });

  test('a room is entered by its door', () => {
    const text = "import { readCard } from '../sharing/read-card';";
    const found = breachesWith('app/screens/planted.ts', text);
    expect(found).toEqual(['app/screens/planted.ts: app/sharing/read-card is not a door of app/sharing']);
    expect(breachesWith('app/screens/planted.ts', "import { readCard } from '../sharing';")).toEqual([]);
  });

  test('the service worker reads only the inbox', () => {
    expect(breachesWith('sw/planted.ts', "import { keep } from '../app/sharing/inbox';")).toEqual([]);
    expect(breachesWith('sw/planted.ts', "import { draft } from '../app/sharing';")).toHaveLength(1);
  });

  test('nobody imports the tests', () =>
    expect(breachesWith('app/screens/planted.ts', "import { toys } from '../../tests/toys';")).toHaveLength(1));
});

describe('the floors of drafting', () => {
  test.each([
    ['geometry', 'draft-types', "import type { Role } from '../draft-types';"],
    ['sizes', 'blocks', "import { flare } from '../blocks/flare';"],
    ['blocks', 'sizes', "import type { Sizes } from '../sizes/wearer';"],
    ['blocks', 'rows', "export type G = import('../rows/garment').Garment;"],
    ['rows', 'garments', "import { findGarment } from '../garments';"],
    ['settling', 'garments', "import { garments } from '../garments';"],
    ['seams', 'settling', "import { match } from '../settling/match';"],
    ['garments/parts', 'garments', "import { cape } from '../cape';"],
    ['packing', 'sheets', "import { layOut } from '../sheets';"],
    ['sheets', 'output', "import { toPdf } from '../output';"],
    ['pieces', 'draft', "const door = await import('../draft');"],
  ])('%s may not import %s', (folder, other, text) => {
    const path = `app/drafting/${folder}/planted.ts`;
    const found = breachesWith(path, text).filter((line) => line.startsWith(path));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(
      `app/drafting/${folder} lies below or beside app/drafting/${other}`.replace(/garments$/, ''),
    );
  });

  test('go up from the ground', () => {
    const text = "import { pathLength } from '../geometry';\nimport { draw } from '../drawing/draw';";
    expect(breachesWith('app/drafting/seams/planted.ts', text)).toEqual([]);
  });
});

describe('the packages', () => {
  test.each([
    ['app/drafting/planted.ts', 'clipper2-ts'],
    ['app/drafting/sheets/planted.ts', 'jspdf'],
    ['app/screens/planted.ts', 'dexie'],
    ['app/sharing/planted.ts', 'idb'],
    ['app/parts/planted.ts', 'qr/decode.js'],
    ['app/words/planted.ts', 'preact/hooks'],
    ['app/parts/planted.ts', 'workbox-window'],
    ['app/screens/planted.ts', 'node:fs'],
    ['app/screens/planted.ts', 'a-package-nobody-chose'],
  ])('%s may not import %s', (path, name) => {
    expect(breachesWith(path, `import '${name}';`).some((found) => found.startsWith(`${path}: the package`))).toBe(
      true,
    );
  });

  test('each has its place', () =>
    expect(breachesWith('app/drafting/geometry/planted.ts', "import { union } from 'clipper2-ts';")).toEqual([]));
});

describe('the first page', () => {
  const reachedThrough = (text: string) =>
    copy
      .planted('app/main.tsx', "import './screens/planted';", () => breachesWith('app/screens/planted.tsx', text))
      .filter((found) => found.startsWith('first page'));

  test.each(["import { draft } from '../drafting';", "export * from '../drafting/draft';"])(
    'may not reach drafting by %s',
    (text) => expect(reachedThrough(text)[0]).toMatch('first page reaches app/drafting'),
  );

  test.each(["import type { Draft } from '../drafting';", "const drafting = () => import('../drafting');"])(
    'may name drafting by %s',
    (text) => expect(reachedThrough(text)).toEqual([]),
  );
});

describe('choosing a garment', () => {
  test.each([
    ["import { flare } from './blocks/flare';", 'app/drafting/blocks/flare.ts'],
    ["export { garments } from './garments';", 'app/drafting/garments/index.ts'],
  ])('loads no block by %s', (text, file) =>
    expect(breachesWith('app/drafting/catalogue.ts', text)).toContain(
      `catalogue reaches ${file}: app/drafting/catalogue.ts`,
    ),
  );

  test('loads none by way of a head', () => {
    const text = "import { flare } from '../blocks/flare';\nexport const one = flare;";
    expect(breachesWith('app/drafting/heads/choice.ts', text).join()).toMatch('catalogue reaches app/drafting/blocks');
  });

  test.each(["import { garments } from '../drafting/garments';", "const d = () => import('../drafting/draft');"])(
    'on a screen is not %s',
    (text) => {
      expect(breachesWith('app/screens/planted.ts', text).join()).toMatch("is the worker's to load");
      expect(breachesWith('app/work/planted.ts', text)).toEqual([]);
    },
  );
});

describe('the pure rooms', () => {
  test.each(['Math.random()', 'Date.now()', 'new Date()'])('know nothing of %s', (text) => {
    expect(breachesWith('app/drafting/planted.ts', `export const now = () => ${text};`)).toHaveLength(1);
    expect(breachesWith('app/screens/planted.ts', `export const now = () => ${text};`)).toEqual([]);
  });

  test.each(['document.title', 'localStorage.length', 'navigator.language', 'process.env', 'fetch'])(
    'cannot name %s',
    (text) => {
      const plant = `export const found: unknown = ${text};\n`;
      const types = () => copy.tool('tsc', '--noEmit', '-p', '.config/tsconfig.pure.json');
      expect(copy.planted('app/drafting/planted.ts', plant, types)).toMatch('app/drafting/planted.ts');
    },
  );
});

describe('a ring of imports', () => {
  const ringOf = (...texts: string[]) =>
    texts.reduceRight<() => string[]>(
      (look, text, n) => () => copy.planted(`app/body/planted-${n}.ts`, text, look),
      () => breachesOf(copy.root).filter((found) => !already.has(found)),
    )();
  const [one, two, three] = [0, 1, 2].map((n) => `app/body/planted-${n}.ts`);

  test.each([
    ['values', "export { b as a } from './planted-1';", "export { a as b } from './planted-0';"],
    ['a type', "import type { B } from './planted-1';", "export { a as B } from './planted-0';"],
    ['a type by address', "export type A = import('./planted-1').B;", "import { A } from './planted-0';"],
    ['a lazy import', "const b = () => import('./planted-1');", "import { a } from './planted-0';"],
  ])('of %s is found', (_, ...texts) => {
    expect(ringOf(...texts)).toEqual([`a ring of imports: ${one} > ${two} > ${one}`]);
  });

  test('of three is found, and told once', () => {
    const ring = [1, 2, 0].map((n) => `import './planted-${n}';`);
    expect(ringOf(...ring)).toEqual([`a ring of imports: ${one} > ${two} > ${three} > ${one}`]);
  });

  test('is none where two lead to the same third', () => {
    expect(ringOf("import './planted-1'; import './planted-2';", "import './planted-2';", 'export {};')).toEqual([]);
  });
});

describe('the screens', () => {
  test.each([
    ['a screen', 'app/screens/review/planted.ts', '../step/then'],
    ['a screen, for a type', 'app/screens/review/planted.ts', '../step/then'],
    ['a screen, for its looks', 'app/screens/review/planted.ts', '../choices/choices.css'],
    ['what runs them', 'app/screens/review/planted.ts', '../shell/app'],
    ['a screen from what is shared', 'app/screens/shared/planted.ts', '../step/then'],
    ['a screen from what runs them', 'app/screens/shell/planted.ts', '../step/then'],
    ['a screen from the door', 'app/screens/index.ts', './step/then'],
  ])('may not import %s', (_, path, target) => {
    for (const text of [`import '${target}';`, `import type { X } from '${target}';`, `const x = import('${target}');`])
      expect(breachesWith(path, text)).toEqual([expect.stringMatching(`^${path}: \\w+ may not import app/screens/`)]);
  });

  test('may import themselves, and what is shared', () => {
    const text = "import './step'; import '../shared/route'; import '../shared/making/making';";
    expect(breachesWith('app/screens/step/planted.ts', text)).toEqual([]);
  });

  test('are named by their list alone', () => {
    const found = [...already].filter((line) => line.includes('may not import'));
    expect(found).toEqual([]);
    expect(breachesWith('app/screens/shell/screens.ts', "const x = import('../step/step');")).toEqual([]);
  });
});
