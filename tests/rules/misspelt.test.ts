import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyOfTheCode } from './copy';

const copy = copyOfTheCode();
afterAll(copy.remove);

const garments = 'app/drafting/garments';
const heads = 'app/drafting/heads';
/** A wrong name, in a twin of a real file: what, where, and the one place that is misspelt. */
const MISSPELT = [
  ['a size that a piece is fed', `${garments}/cape.ts`, "flareTop: 'capeNeck'", "flareTop: 'capeNekc'"],
  ['a choice', `${garments}/cape.ts`, '({ hood }: Hoods) =>', '({ hodo: hood }: Hoods) =>'],
  ['a piece in a seam', `${garments}/cape.ts`, "piece: 'cape', edge: 'side'", "piece: 'caep', edge: 'side'"],
  ['an edge in a seam', `${garments}/cape.ts`, "edge: 'bottom' },", "edge: 'botom' },"],
  ['a default', `${heads}/cape.ts`, "'three'], 'none')", "'three'], 'nonne')"],
  [
    "an edge of another part's piece",
    `${garments}/parts/sleeve.ts`,
    "'back', edge: 'armhole'",
    "'back', edge: 'armhloe'",
  ],
  ['a value of a choice', `${garments}/parts/sleeve-match.ts`, "sleeve === 'puffed'", "sleeve === 'pufed'"],
  ['a size that a maker gives', 'app/drafting/sizes/cape.ts', 'capeHem: hem / 2', 'capeHme: hem / 2'],
  ['a size that a maker takes', 'app/drafting/sizes/long.ts', '(wearer, { chest,', '(wearer, { chset: chest,'],
  ['a size that rows read', `${garments}/cape.ts`, 'sizes: { capeNeck,', 'sizes: { capeNekc: capeNeck,'],
  ['a size that is turned', `${garments}/parts/hood-match.ts`, "size: 'napeRise'", "size: 'napeRsie'"],
  ['a length that rows read', `${garments}/cape.ts`, "look.length('cape.bottom')", "look.length('cape.bottmo')"],
  ["a block's own size", 'app/drafting/blocks/bib.ts', 'draw: ({ bibNeck,', 'draw: ({ bibNekc: bibNeck,'],
  ["a block's own edge", 'app/drafting/blocks/bib.ts', "edges: ['top', 'side'", "edges: ['tpo', 'side'"],
  ['an edge with a role', `${garments}/bib.ts`, "({ top: 'seam'", "({ tpo: 'seam'"],
  ['a line that is cut open', `${garments}/parts/slit.ts`, "cuts: ['slit']", "cuts: ['slti']"],
  ['a value that a choice changes to', `${garments}/parts/hood.ts`, "to: 'three'", "to: 'tree'"],
  ['a measure', `${heads}/bib.ts`, "'bib-length'", "'bib-lenght'"],
  ['what a choice left to us starts as', `${heads}/tee.ts`, "opening: 'none'", "opening: 'non'"],
  ['nothing, but a size is not fed', `${garments}/cape.ts`, "\n        flareHeight: 'capeFront',", ''],
  ['nothing, but a part is missing that others ask for', `${garments}/cape.ts`, '\n  capePart,\n', '\n'],
  [
    'nothing, but the head lacks a choice',
    `${garments}/cape.ts`,
    'assemble(capeHead,',
    'assemble({ ...capeHead, choices: {} },',
  ],
] as const;

const twin = (file: string, at: number) => join(dirname(file), `planted-${at}.ts`);
/** What the compiler says of every twin, the unspoilt ones among them. */
let said = '';

beforeAll(() => {
  const files = MISSPELT.flatMap(([, file, from, to], at) => {
    const text = readFileSync(join(copy.root, file), 'utf8');
    expect(text).toContain(from);
    return [
      [twin(file, at), text.replace(from, to)],
      [twin(file, at + 100), text],
    ] as const;
  });
  const compile = files.reduce<() => string>(
    (look, [path, text]) =>
      () =>
        copy.planted(path, text, look),
    () => copy.tool('tsc', '--noEmit', '-p', '.config/tsconfig.pure.json'),
  );
  said = compile();
});

describe('a wrong name does not compile', () => {
  test.each(MISSPELT.map(([what, file], at) => [what, file, at] as const))('%s, in %s', (_, file, at) => {
    expect(said).toContain(`${twin(file, at)}(`);
    expect(said).not.toContain(`${twin(file, at + 100)}(`);
  });
});
