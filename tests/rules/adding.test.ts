import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { languageFiles } from '../../.config/languages.mjs';
import { localeBreaches } from '../../.config/locales.mjs';
import { demoCards } from '../../app/measuring';
import { copyOfTheCode } from './copy';

/** A towel, added to a copy as DEVELOPERS.md says: a head, how it is made, a line in both lists, a picture, words. */
const copy = copyOfTheCode();
afterAll(copy.remove);

const HEAD = `import { hemChoice } from './choices';
import { head, needs } from './head';

/** A towel round the waist. */
export const towelHead = head({
  id: 'towel',
  bodies: ['upright'],
  level: 'first',
  looks: [],
  choices: { hem: hemChoice },
  auto: {},
  needs: needs(['waist-girth', 'waist-to-hem']),
});
`;

const MADE = `import { flare } from '../blocks/flare';
import { towelHead } from '../heads/towel';
import type { Hems } from '../heads/choices';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { maker, type SizesOf } from '../sizes/maker';
import { hemRole } from './parts/hem';

const towelSizes = maker([], ['towelHalf', 'towelLength'], (wearer) => ({
  sizes: { towelHalf: wearer.of('waist-girth') / 3, towelLength: wearer.of('waist-to-hem') + wearer.hem },
}));

type Gives = { readonly size: SizesOf<typeof towelSizes>; readonly edge: EdgesOf<'towel', typeof flare> };
type Names = Gives & { readonly choices: Hems };

export const towel = assemble(towelHead, [
  part<{ choices: Hems; size: never; edge: never }, Gives>({
    sizes: [towelSizes],
    pieces: [
      piece<Names>()('towel', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: { flareTop: 'towelHalf', flareBottom: 'towelHalf', flareHeight: 'towelLength' },
        roles: (choices) => ({ top: 'casing', side: hemRole(choices), bottom: hemRole(choices), centre: 'fold' }),
      }),
    ],
    seams: (['side', 'bottom', 'top'] as const).map((edge) => ({
      name: \`towel-\${edge}\`,
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'towel', edge }],
      second: [],
    })),
  }),
]);
`;

const WORDS = {
  garment: { towel: { name: 'Towel', note: 'A strip round the waist.' } },
  flag: { 'wears-towel': 'A towel would suit it.' },
  piece: { towel: 'Towel' },
  seam: { 'towel-side': 'Sides', 'towel-bottom': 'Hem', 'towel-top': 'Top' },
};

/** Puts one text for another in a file of the copy. */
function change(path: string, from: string, to: string): void {
  const file = join(copy.root, path);
  const text = readFileSync(file, 'utf8');
  expect(text).toContain(from);
  writeFileSync(file, text.replace(from, to));
}

const types = () => copy.tool('tsc', '--noEmit', '-p', '.config/tsconfig.browser.json');
const tables = () =>
  copy.tool('vitest', 'run', '--config', '.config/vitest.config.ts', '--project', 'unit', 'tests/rules/tables.test.ts');

beforeAll(() => {
  for (const name of ['tests', 'README.md', 'DEVELOPERS.md'])
    cpSync(join(import.meta.dirname, '../..', name), join(copy.root, name), { recursive: true });
  writeFileSync(join(copy.root, 'app/drafting/heads/towel.ts'), HEAD);
  writeFileSync(join(copy.root, 'app/drafting/garments/towel.ts'), MADE);
});

describe('adding a towel', { timeout: 240_000 }, () => {
  test('a head does not compile without a picture, nor until it is made', () => {
    change(
      'app/drafting/heads/index.ts',
      'import { bibHead }',
      "import { towelHead } from './towel';\nimport { bibHead }",
    );
    change('app/drafting/heads/index.ts', '  bibHead,', '  towelHead,\n  bibHead,');
    const said = types();
    expect(said).toMatch('garment-pictures.ts');
    expect(said).toMatch('app/drafting/garments/index.ts');
  });

  test('with a picture and made, it compiles', () => {
    change('app/parts/pictures/garment-pictures.ts', '  bib: [', "  towel: [cloth('M18 20h36v40H18z')],\n  bib: [");
    change('app/drafting/garments/index.ts', 'import { bib }', "import { towel } from './towel';\nimport { bib }");
    change('app/drafting/garments/index.ts', '  bib,', '  towel,\n  bib,');
    expect(types()).toBe('');
  });

  test('without words the tables of tests are red, and green with them', () => {
    expect(tables()).toMatch('garment.towel.name');
    for (const name of languageFiles(copy.root)) {
      const file = join(copy.root, 'locales', name);
      const said = JSON.parse(readFileSync(file, 'utf8'));
      for (const [topic, words] of Object.entries(WORDS)) Object.assign(said[topic], words);
      writeFileSync(file, JSON.stringify(said, null, 2));
    }
    expect(localeBreaches(copy.root)).toEqual([]);
    expect(tables()).toBe('');
  });

  test('it is listed and drafted', () => {
    const command = (...words: string[]) =>
      spawnSync(process.execPath, ['--import', 'tsx', 'app/command/draft.ts', ...words], {
        cwd: copy.root,
        encoding: 'utf8',
      });
    const listed = JSON.parse(command('--list').stdout).garments.find(({ id }: { id: string }) => id === 'towel');
    expect(listed).toMatchObject({ bodies: ['upright'], needs: ['waist-girth', 'waist-to-hem'] });
    const card = demoCards.find(({ toy }) => toy.body === 'upright');
    mkdirSync(join(copy.root, 'made'));
    writeFileSync(join(copy.root, 'order.json'), JSON.stringify({ card, garment: 'towel' }));
    expect(command('order.json', '--out', 'made')).toMatchObject({ status: 0 });
    const { pieces } = JSON.parse(readFileSync(join(copy.root, 'made/draft.json'), 'utf8'));
    expect(pieces.map(({ name }: { name: string }) => name)).toEqual(['towel']);
  });
});
