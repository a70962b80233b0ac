import { beforeAll, describe, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import { toGuidePdf, toPdf, toPencilPdf, toTapePdf, toTestPdf } from '../../app/drafting/output';
import { outlineOf } from '../../app/drafting/pieces/outline';
import { findPaper, formed, layOut } from '../../app/drafting/sheets';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade } from '../toys/drafts';
import { type ReadPage, readPdf } from './pdf-reading';

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

const a4 = findPaper('a4') ?? expect.fail('no A4');
const laid = (draft: ReturnType<typeof handMade>, more = {}) => ({
  draft,
  layout: layOut(draft, a4, { effort: 2, seed: 1, ...more }),
});
const words = (page: ReadPage | undefined): string => (page?.texts ?? []).map(({ text }) => text).join(' ');

describe('a pattern in other ways', () => {
  test('copies come one after the other, single pages keep their numbers', async () => {
    const sheets = [laid(handMade(1))];
    const { pages } = await readPdf(toPdf(sheets, { say, units: 'cm' }));
    const twice = await readPdf(toPdf(sheets, { say, units: 'cm', copies: 2 }));
    expect(twice.pages.map(words)).toEqual([...pages, ...pages].map(words));
    const one = await readPdf(toPdf(sheets, { say, units: 'cm', only: [1] }));
    expect(one.pages.map(words)).toEqual([words(pages[1])]);
    expect(words(one.pages[0])).toContain(`page 2 of ${pages.length}`);
  });

  test('for several toys every page bears its toy, and the cloth is told for all together', async () => {
    const [first, second] = demoDrafts();
    if (!first || !second) return expect.fail('two toys');
    const sheets = [laid(first), laid(second)];
    const { pages } = await readPdf(toPdf(sheets, { say, units: 'cm', list: true }));
    const [one = 0, other = 0] = sheets.map(({ layout }) => layout.pages.length);
    for (const page of pages.slice(0, one)) expect(words(page)).toContain(first.toy);
    for (const page of pages.slice(one, one + other)) expect(words(page)).toContain(second.toy);
    const listed = pages
      .slice(one + other)
      .map(words)
      .join(' ');
    expect(listed).toContain(`In all, for: ${first.toy}, ${second.toy}`);
    for (const { name } of [...first.pieces, ...second.pieces]) expect(listed).toContain(say(`piece.${name}`));
  });

  test('what is left out is on no page, all else is', () => {
    const draft = handMade(1);
    const { layout } = laid(draft, { without: [0, 2] });
    const placed = new Set(layout.pages.flatMap((page) => page.placed.map(({ piece }) => piece)));
    expect([...placed].sort()).toEqual(draft.pieces.map((_, index) => index).filter((index) => index % 2 || index > 2));
  });

  test('a card is whole, its outline the line to sew, its hole has card all round', () => {
    for (const draft of [handMade(1), ...demoDrafts()]) {
      const cards = formed(draft, 'card');
      for (const { piece: index, whole } of laid(draft, { form: 'card' }).layout.pages.flatMap((page) => page.placed)) {
        const piece = draft.pieces[index] ?? expect.fail('no such piece');
        const card = cards.pieces[index] ?? expect.fail('no such card');
        const edge = outlineOf(card.cutLine, whole);
        expect(whole).toBe(piece.onFold);
        expect(edge).toEqual(outlineOf(piece.seamLine, whole));
        for (const { from } of card.cuts.slice(piece.cuts.length).flat())
          for (const at of edge) expect(Math.hypot(at.x - from.x, at.y - from.y)).toBeGreaterThan(3);
      }
      const holes = cards.pieces.filter(({ cuts }, index) => cuts.length > (draft.pieces[index]?.cuts.length ?? 0));
      expect(holes.length).toBeGreaterThan(1);
    }
  });
});

test('in large print every word is 18 points or more and every line a millimetre wide, read back', async () => {
  const draft = handMade(1);
  const written = { say, units: 'cm', print: 'large' } as const;
  const sheets = [laid(draft, { print: 'large' })];
  const files = [
    toPdf(sheets, { ...written, list: true }),
    toPencilPdf(draft, written),
    toGuidePdf(draft, { ...written, way: 'machine' }),
    toTestPdf({ ...written, date: '2026-01-02', paper: 'letter' }),
    toTapePdf({ ...written, date: '2026-01-02' }),
  ];
  for (const { pages } of await Promise.all(files.map(readPdf))) {
    expect(Math.min(...pages.flatMap(({ texts }) => texts.map(({ size }) => size)))).toBeGreaterThan(17.9);
    expect(Math.min(...pages.flatMap(({ strokes }) => strokes.map(({ width }) => width)))).toBeGreaterThan(0.99);
  }
  const lengths = (await readPdf(toPdf(sheets, written))).pages.flatMap(({ strokes }) =>
    strokes.map(({ points: [a, b] }) => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0)),
  );
  for (const wanted of [200, 50, 50.8]) expect(lengths.some((mm) => Math.abs(mm - wanted) < 0.02)).toBe(true);
});

test.each([
  ['a4', 'usual'],
  ['letter', 'usual'],
  ['a3', 'usual'],
  ['a4', 'large'],
  ['letter', 'large'],
] as const)('the page that tests a printer on %s in %s print keeps within what patterns use', async (paper, print) => {
  const [page] = (await readPdf(toTestPdf({ say, units: 'cm', print, date: '2026-01-02', paper }))).pages;
  if (!page) return expect.fail('no page');
  const lengths = page.strokes.map(({ points: [a, b] }) => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0));
  for (const wanted of [200, 150, 50, 50.8]) expect(lengths.some((mm) => Math.abs(mm - wanted) < 0.02)).toBe(true);
  for (const { x, y } of page.strokes.flatMap(({ points }) => points)) {
    expect(Math.min(x, y)).toBeGreaterThan(7.9);
    expect(x).toBeLessThan(page.width - 7.9);
    expect(y).toBeLessThan(page.height - 16.9);
  }
});
