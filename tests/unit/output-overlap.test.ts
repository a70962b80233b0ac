import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { type Ink, largeInk, pagesInk, pensOf, type Words } from '../../app/drafting/output';
import { type Form, layOut } from '../../app/drafting/sheets';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade } from '../toys/drafts';
import { paper } from './sheets-overlap';
import { realWidth, wordsOver } from './words-over';

/** The languages whose words are about as wide as that. */
const LATIN = ['en', 'es', 'fr', 'de'] as const;
type Latin = (typeof LATIN)[number];

const says = new Map<string, Say>();
beforeAll(async () => {
  for (const language of LATIN) says.set(language, await createSay(language));
});

const widthOf = realWidth();
const largeWidth = realWidth('large');

const cases: readonly (readonly [string, Draft, string, boolean, Form])[] = [
  ['a middling toy', handMade(1), 'letter', true, 'cut'],
  ['unfolded', handMade(0.8), 'a4', false, 'cut'],
  ['a toy of a metre', handMade(2.6), 'a4', true, 'cut'],
  ['in the copy shop', handMade(1), 'a0', true, 'cut'],
  ['without allowances', handMade(1), 'a4', true, 'sewn'],
  ...demoDrafts().map((draft) => [`${draft.toy}, cards`, draft, 'a4', true, 'card'] as const),
  ...demoDrafts().map((draft) => [draft.toy, draft, 'a4', true, 'cut'] as const),
  ...demoDrafts('minky').map((draft) => [`${draft.toy} in minky`, draft, 'letter', true, 'cut'] as const),
  ...['dress', 'bonnet', 'cape', 'tunic'].flatMap((garment) =>
    demoDrafts('linen', garment).map((draft) => [`${draft.toy}’s ${garment}`, draft, 'a4', true, 'cut'] as const),
  ),
];

test.each(cases)('%s: no word lies over a line or another word', (_, ...rest) => {
  expect(overlaidOn(...rest, 'en')).toEqual([]);
});

test.each(LATIN)('a small toy, in %s: no word lies over a line or another word', (language) => {
  expect(overlaidOn(handMade(0.4), 'a4', true, 'cut', language)).toEqual([]);
});

function overlaidOn(draft: Draft, id: string, halves: boolean, form: Form, language: Latin): readonly string[] {
  const say = says.get(language);
  if (!say) throw new Error(language);
  const layout = layOut(draft, paper(id), { effort: 4, seed: 1, halves, form });
  const inkOn = pagesInk(draft, layout, { say, units: 'in', widthOf });
  return layout.pages.flatMap((page) => wordsOver(inkOn(page), widthOf, page));
}

/** Points; millimetres. */
const LARGE_PT = 18;
const LARGE_LINE_MM = 1;

const large: readonly (readonly [string, Draft])[] = [
  ...([0.4, 1, 2.6] as const).map((scale) => [`a toy of ${scale}`, handMade(scale)] as const),
  ...demoDrafts().map((draft) => [draft.toy, draft] as const),
];

test.each(large)(
  '%s in large print: no word lies over another or a line, none is small, and each piece has its number',
  (_, draft) => {
    const [say] = says.values();
    if (!say) throw new Error('no words');
    const layout = layOut(draft, paper('a4'), { effort: 4, seed: 1, print: 'large' });
    const lettering = { say, units: 'in', widthOf: largeWidth } as const;
    const pages = layout.pages.map(pagesInk(draft, layout, lettering));
    const words = largeInk(draft, layout, paper('a4'), lettering);
    expect([...pages, ...words].flatMap((ink) => wordsOver(ink, largeWidth))).toEqual([]);
    const texts = (all: readonly (readonly Ink[])[]) => all.flat().filter((ink): ink is Words => ink.kind === 'words');
    expect(texts([...pages, ...words]).filter(({ size }) => size < LARGE_PT)).toEqual([]);
    expect(Object.values(pensOf.large).filter(({ width }) => width < LARGE_LINE_MM)).toEqual([]);
    const said = texts(pages).map(({ text }) => text);
    draft.pieces.forEach((piece, at) => {
      const named = `${at + 1}. ${say(`piece.${piece.name}`)}`;
      expect(
        said.some((text) => text === `${at + 1}` || (named.startsWith(text) && text.startsWith(`${at + 1}.`))),
      ).toBe(true);
      expect(texts(words).map(({ text }) => text)).toContain(named);
    });
  },
);

test('words over a line, and over words, are found', () => {
  const at = { x: 10, y: 10 };
  const words: Words = { kind: 'words', layer: 'words', at, turn: 0, size: 10, bold: false, text: 'Sleeve' };
  const beside: Words = { ...words, at: { x: 10, y: 16 } };
  const line = (x: number): Ink => ({
    kind: 'stroke',
    layer: 'cut',
    pen: 'cut',
    closed: false,
    path: [{ kind: 'line', from: { x, y: 0 }, to: { x, y: 20 } }],
  });
  const found = (...ink: readonly Ink[]) => wordsOver(ink, widthOf, { width: 100, height: 100 });
  expect(found(words, beside, line(9))).toEqual([]);
  expect(found(words, line(15))).toEqual(['Sleeve over a line']);
  expect(found(words, { ...words, at: { x: 12, y: 11 } })).toEqual(['Sleeve over Sleeve']);
  expect(found(words, { ...words, size: 4, at: { x: 13, y: 9 } })).toEqual(['Sleeve over Sleeve']);
  expect(found({ ...words, at: { x: 92, y: 10 } })).toEqual(['Sleeve off the page']);
});
