import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { docsBreaches } from '../../.config/docs.mjs';
import { glossaryBreaches } from '../../.config/glossary.mjs';
import { gluedSentences } from '../../.config/glued.mjs';
import { leftovers } from '../../.config/leftovers.mjs';
import { localeBreaches } from '../../.config/locales.mjs';

/** A folder of these files, for as long as the test runs. */
function folderOf(files: Record<string, string | object>): string {
  const root = mkdtempSync(join(tmpdir(), 'hemling-words-'));
  onTestFinished(() => rmSync(root, { recursive: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), typeof content === 'string' ? content : JSON.stringify(content));
  }
  return root;
}

const ENGLISH = {
  toys_one: '{{count}} toy',
  toys_other: '{{count}} toys',
  name: 'Name of {{toy}}',
  flag: { thin: 'Thin' },
};
const CODE = `say('toys', { count }); say(known ? 'name' : \`flag.\${code}\`);`;
const languages = (others: Record<string, object>, code = CODE) =>
  localeBreaches(
    folderOf({
      'app/planted.ts': code,
      'locales/en.json': ENGLISH,
      ...Object.fromEntries(Object.entries(others).map(([language, words]) => [`locales/${language}.json`, words])),
    }),
  );

test('languages that say what English says are in order', () => {
  const ja = { toys_other: '{{count}}個', name: '{{toy}}の名前', flag: { thin: '細い' } };
  const ar = {
    toys_zero: 'لا دمى',
    toys_one: 'دمية واحدة',
    toys_two: 'دميتان',
    toys_few: '{{count}} دمى',
    toys_many: '{{count}} دمية',
    toys_other: '{{count}} دمية',
    name: 'اسم {{toy}}',
    flag: { thin: 'رفيع' },
  };
  expect(languages({ ja, ar })).toEqual([]);
});

test.each([
  ['a key is missing', { flag: {} }, 'no words for flag.thin'],
  ['a key is too many', { extra: 'x' }, 'extra is not in English'],
  ['a plural form is missing', { toys_other: undefined }, 'no words for toys_other'],
  ['a plural form is of another language', { toys_few: '{{count}}' }, 'toys_few is not in English'],
  ['words are empty', { name: ' ' }, 'name is empty'],
  ['a value is lost', { name: 'Name' }, 'name uses other values than English'],
  ['a value is misspelt', { toys_other: '{{cuont}} toys' }, 'toys_other uses other values than English'],
])('it is found when %s', (_, change, wrong) => {
  expect(languages({ de: { ...ENGLISH, ...change } })).toContain(`locales/de.json: ${wrong}`);
});

const spaced = (fr: string, es = 'Nombre') => {
  const many = { ...ENGLISH, toys_many: '{{count}}' };
  return languages({ fr: { ...many, name: `${fr} {{toy}}` }, es: { ...many, name: `${es} {{toy}}` } });
};

test.each([
  ['before a colon', 'Nom :'],
  ['before a question mark', 'Nom\u00a0: où ?'],
  ['before the end of what is said', '«\u202fNom »'],
  ['after its beginning', '« Nom\u00a0»'],
  ['before an exclamation at the end of a line', 'Nom\n!'],
])('in French a space that may break is found %s', (_, name) =>
  expect(spaced(name)).toEqual(['locales/fr.json: name parts a mark from its word by a space that may break']),
);

test('a space that does not break, or is in another language, is in order', () => {
  const name = '«\u00a0Nom\u202f»\u00a0: où\u202f? là\u202f; oui\u00a0!';
  expect(spaced(name, 'De : « sí »')).toEqual([]);
});

test.each([
  "say('nmae')",
  "say('toys_one_more')",
  "words.say(known ? 'name' : 'lost')",
  "const act = { words: 'flag.lost' }",
  'say(`flags.$' + '{code}`)',
  'sayFirst(say, [`lost.$' + '{code}`, code])',
])('a code without words is found in %s', (code) =>
  expect(languages({}, `${CODE} ${code};`).join()).toMatch('app/planted.ts: no words for'),
);

test('one of the codes that are tried is enough', () =>
  expect(languages({}, `${CODE} sayFirst(say, [\`lost.\${code}\`, 'name']);`)).toEqual([]));

test('a note is of words that there are, or of a topic', () => {
  const noted = (notes: object) => languages({ notes });
  expect(noted({ toys: 'how many', flag: 'names', 'flag.thin': 'of cloth' })).toEqual([]);
  expect(noted({ lost: 'gone', fla: 'half a topic' })).toEqual([
    'locales/notes.json: nothing is called lost',
    'locales/notes.json: nothing is called fla',
  ]);
});

test('words that nothing says are found', () =>
  expect(languages({}, CODE.replace("'name'", "'toys'"))).toEqual(['locales/en.json: nothing says name']));

test('docs may name only what is there', () => {
  const scripts = { scripts: { start: '', draft: '' } };
  const right =
    'Run `npm start`, see `app/` and `app/a.ts`, write `dist/`.\n```\nnpm ci\nnpm run --silent draft -- x.json\n```\n';
  const docs = (text: string, commands = scripts) =>
    docsBreaches(folderOf({ 'package.json': commands, 'app/a.ts': '', 'README.md': text, 'DEVELOPERS.md': right }));
  expect(docs(right)).toEqual([]);
  expect(docs('`npm run lost`')).toEqual(['README.md: no command npm run lost']);
  expect(docs('```\nnpm lost\n```')).toEqual(['README.md: no command npm lost']);
  expect(docs('`app/b.ts` and `old/`')).toEqual(['README.md: no file app/b.ts', 'README.md: no file old']);
  const lost = { scripts: { ...scripts.scripts, lost: 'node app/lost.ts' } };
  expect(docs(right, lost)).toEqual(['package.json: no file app/lost.ts for npm run lost']);
});

test('what was left over is found', () => {
  const plant = (path: string, text: string) =>
    leftovers(
      folderOf({ 'app/a.ts': '', 'sw/a.ts': '', 'tests/a.ts': '', '.config/a.mjs': '', '.ci/run': '', [path]: text }),
    );
  expect(plant('app/a.ts', 'const todoList = 1;')).toEqual([]);
  expect(plant('app/a.ts', `\n// TO${'DO'}: later`)).toEqual([`app/a.ts:2: TO${'DO'}`]);
  expect(plant('tests/a.ts', `// biome-${'ignore'} lint: why`)).toHaveLength(1);
  expect(plant('sw/a.ts', `// @ts-${'expect-error'}`)).toHaveLength(1);
  expect(plant('tests/a.ts', `// @ts-${'expect-error'}`)).toEqual([]);
});

test.each([
  [`\`\${say('name', { toy })}: \${mm}\``, 'a sentence glued to what is said'],
  ["say('name', { toy }) + mm", 'a sentence added to what is said'],
  ["names.join(', ')", 'a list joined without its language'],
  ['one.localeCompare(two)', 'names sorted without their language'],
  ["new Intl.NumberFormat('en')", 'a number or a day written outside of app/words'],
])('%s is found', (code, wrong) => {
  expect(gluedSentences(folderOf({ 'app/planted.ts': `\n${code};` }))).toEqual([`app/planted.ts:2: ${wrong}`]);
});

test('what a language joins and sorts is in order', () => {
  const code = `say('list.row', { of: names }); one.localeCompare(two, locale); path.join(' '); say(\`name.\${id}\`);`;
  expect(gluedSentences(folderOf({ 'app/planted.ts': code }))).toEqual([]);
});

test.each([
  ['is in order', '| hem | Saum, Säume | from memory |', 'Säume', ''],
  ['lacks a term', '| seam | Naht | from memory |', 'Säume', 'no word for hem'],
  ['does not say its word', '| hem | Saum | from memory |', 'Kanten', 'Saum (hem) is not what is said: Kanten'],
  ['names nobody', '| hem | Saum | |', 'Saum', 'nobody is named who says Saum'],
])('a glossary %s', (_, row, said, wrong) => {
  const root = folderOf({
    'locales/en.json': { edge: { hem: 'Hems' } },
    'locales/de.json': { edge: { hem: said } },
    'locales/glossary/en.md': table('| Term | Meaning | Where | Key |', '| hem | an edge | edges | `edge.hem` |'),
    'locales/glossary/de.md': table('| English | German | Source |', row),
  });
  expect(glossaryBreaches(root)).toEqual(wrong ? [`locales/glossary/de.md: ${wrong}`] : []);
});

const table = (head: string, row: string) => `${head}\n${head.replace(/[^|]/g, '-')}\n${row}\n`;
