import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { flatten, type Point, rotate } from '../../app/drafting/geometry';
import { type Ink, largeInk, pageInk, pensOf, type Words } from '../../app/drafting/output';
import { type Form, formed, layOut } from '../../app/drafting/sheets';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade } from '../toys/drafts';
import { paper } from './sheets-overlap';

/** About how wide Helvetica is, as a share of the size; letters reach this far above the baseline. */
const WIDTH_SHARE = 0.5;
const HEIGHT_SHARE = 0.7;
const MM_PER_PT = 25.4 / 72;

/** The languages whose words are about as wide as that. */
const LATIN = ['en', 'es', 'fr', 'de'] as const;
type Latin = (typeof LATIN)[number];

const says = new Map<string, Say>();
beforeAll(async () => {
  for (const language of LATIN) says.set(language, await createSay(language));
});

const widthOf = (text: string, size: number): number => text.length * size * MM_PER_PT * WIDTH_SHARE;
const largeWidth = Object.assign((text: string, size: number) => widthOf(text, size), { print: 'large' as const });

/** The four corners of what a text covers, a hair smaller than it is. */
function cover({ at, text, size, turn }: Words): readonly Point[] {
  const [w, h] = [widthOf(text, size), size * MM_PER_PT * HEIGHT_SHARE];
  return [
    [0.1, -0.1],
    [w - 0.1, -0.1],
    [w - 0.1, -h + 0.1],
    [0.1, -h + 0.1],
  ].map(([x = 0, y = 0]) => {
    const step = rotate({ x, y }, turn);
    return { x: at.x + step.x, y: at.y + step.y };
  });
}

/** Whether two lines of points cross anywhere. */
function cross(a: readonly Point[], b: readonly Point[]): boolean {
  const sides = (line: readonly Point[]) => line.slice(1).map((q, i) => [line[i] ?? q, q] as const);
  return sides(a).some(([p, q]) => sides(b).some(([r, s]) => meet(p, q, r, s)));
}

function meet(p: Point, q: Point, r: Point, s: Point): boolean {
  const side = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** Texts that lie over a line or over each other. */
function overlaid(ink: readonly Ink[]): readonly string[] {
  const words = ink.filter((each): each is Words => each.kind === 'words');
  const lines = ink.flatMap((each) => (each.kind === 'stroke' ? [flatten(each.path, 0.2)] : []));
  const boxes = words.map((each) => ({ text: each.text, ring: closed(cover(each)) }));
  return boxes.flatMap(({ text, ring }, i) => {
    const over = boxes.slice(i + 1).find((other) => cross(ring, other.ring));
    const line = lines.some((each) => cross(ring, each));
    return [...(over ? [`${text} over ${over.text}`] : []), ...(line ? [`${text} over a line`] : [])];
  });
}

const closed = (ring: readonly Point[]): readonly Point[] => [...ring, ...ring.slice(0, 1)];

const cases: readonly (readonly [string, Draft, string, boolean, Form])[] = [
  ['a middling toy', handMade(1), 'letter', true, 'cut'],
  ['unfolded', handMade(0.8), 'a4', false, 'cut'],
  ['a toy of a metre', handMade(2.6), 'a4', true, 'cut'],
  ['in the copy shop', handMade(1), 'a0', true, 'cut'],
  ['without allowances', handMade(1), 'a4', true, 'sewn'],
  ...demoDrafts().map((draft) => [`${draft.toy}, cards`, draft, 'a4', true, 'card'] as const),
  ...demoDrafts().map((draft) => [draft.toy, draft, 'a4', true, 'cut'] as const),
  ...demoDrafts('minky').map((draft) => [`${draft.toy} in minky`, draft, 'letter', true, 'cut'] as const),
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
  const shown = formed(draft, form);
  return layout.pages.flatMap((page) => overlaid(pageInk(draft, layout, page, { say, units: 'in', widthOf }, shown)));
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
    const pages = layout.pages.map((page) => pageInk(draft, layout, page, lettering));
    const words = largeInk(draft, layout, paper('a4'), lettering);
    expect([...pages, ...words].flatMap(overlaid)).toEqual([]);
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
  expect(overlaid([words, beside, line(9)])).toEqual([]);
  expect(overlaid([words, line(15)])).toEqual(['Sleeve over a line']);
  expect(overlaid([words, { ...words, at: { x: 12, y: 11 } }])).toEqual(['Sleeve over Sleeve']);
});
