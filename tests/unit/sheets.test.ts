import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { rotate } from '../../app/drafting/geometry';
import { BOTTOM_MARGIN_MM, EDGE_MARGIN_MM, layOut } from '../../app/drafting/sheets';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade, oblong } from '../toys/drafts';
import { clashes, furnitureClashes, furnitureOn, outlines, paper, tiles } from './sheets-overlap';

const usual = { effort: 3, seed: 1 };
/** Enough where what is laid must keep apart, however well. */
const brief = { effort: 1, seed: 1 };
const of = (...pieces: Draft['pieces'][number][]): Draft => handMade(1, { pieces });

describe('pieces on paper', () => {
  const papers = ['a4', 'letter', 'legal', 'a3', 'tabloid', 'either', 'a0', 'roll:610'];

  test.each(papers)('on %s they keep apart, inside the margins, each placed once', (id) => {
    for (const draft of [handMade(0.5), handMade(2), ...demoDrafts()]) {
      const layout = layOut(draft, paper(id), id === 'a4' ? usual : brief);
      expect(clashes(draft, layout)).toBe(0);
      expect(layout.pages.length).toBeGreaterThanOrEqual(layout.least);
      expect(furnitureClashes(draft, layout)).toEqual([]);
      for (const name of ['title', 'card', 'square', 'notes'])
        expect(layout.pages.flatMap(furnitureOn).filter(([found]) => found === name)).toHaveLength(1);
      expect(layout.pages.filter(({ long }) => long)).toHaveLength(1);
      for (const page of layout.pages) {
        const shown = page.placed.map((placed, i) => (placed.window ? [] : (outlines(draft, page)[i] ?? [])));
        for (const { x, y } of shown.flat()) {
          expect(x).toBeGreaterThanOrEqual(EDGE_MARGIN_MM - 1e-6);
          expect(x).toBeLessThanOrEqual(page.width - EDGE_MARGIN_MM + 1e-6);
          expect(y).toBeGreaterThanOrEqual(EDGE_MARGIN_MM - 1e-6);
          expect(y).toBeLessThanOrEqual(page.height - BOTTOM_MARGIN_MM + 1e-6);
        }
      }
      const whole = layout.pages.flatMap((page) =>
        page.placed.filter((placed) => !placed.window).map((placed) => placed.piece),
      );
      const tiled = new Set(tiles(layout).map((page) => page.tile?.piece));
      expect([...whole, ...tiled].sort()).toEqual(draft.pieces.map((_, i) => i));
    }
  });

  test('no fewer pages could be than their area takes, and their halves that share none', () => {
    const pagesOf = (...pieces: Draft['pieces'][number][]) => {
      const { least, pages } = layOut(of(...pieces), paper('a4'), usual);
      return { least, pages: pages.length };
    };
    const many = Array.from({ length: 40 }, (_, index) => oblong(`small${index}`, 60, 60));
    expect(pagesOf(...many).least).toBe(Math.ceil((40 * 60 * 60) / ((210 - 16) * (297 - 25))));
    const large = ['one', 'two', 'three'].map((name) => oblong(name, 180, 150));
    expect(pagesOf(...large)).toEqual({ least: 3, pages: 3 });
  });

  test('the overlap test finds an overlap of a tenth of a millimetre', () => {
    const draft = of(oblong('one', 50, 50), oblong('two', 50, 50));
    const layout = layOut(draft, paper('a4'), usual);
    const [page] = layout.pages;
    const [first, second] = page?.placed ?? [];
    if (!page || !first || !second) return expect.fail('two pieces fit a page');
    const near = { ...second, move: { ...first.move, x: first.move.x + 49.9 } };
    expect(clashes(draft, { ...layout, pages: [{ ...page, placed: [first, near] }] })).toBe(1);
    const touching = { ...second, move: { ...first.move, x: first.move.x + 50 } };
    expect(clashes(draft, { ...layout, pages: [{ ...page, placed: [first, touching] }] })).toBe(0);
  });

  test.each(['a4', 'letter', 'either'])('a piece that just fits %s is whole, one that just does not is tiled', (id) => {
    const sheet = paper(id);
    const [width, height] = [sheet.width - 2 * EDGE_MARGIN_MM, sheet.height - EDGE_MARGIN_MM - BOTTOM_MARGIN_MM];
    expect(tiles(layOut(of(oblong('just', width, height)), sheet, usual))).toEqual([]);
    expect(tiles(layOut(of(oblong('turned', height, width)), sheet, usual))).toEqual([]);
    expect(tiles(layOut(of(oblong('over', width + 0.1, height)), sheet, usual)).length).toBeGreaterThan(1);
    expect(tiles(layOut(of(oblong('long', width, height + 0.1)), sheet, usual)).length).toBeGreaterThan(1);
  });

  test('a strap longer than the page is turned aslant rather than split', () => {
    const layout = layOut(of(oblong('strap', 20, 305)), paper('a4'), usual);
    expect(tiles(layout)).toEqual([]);
    expect(tiles(layOut(of(oblong('strap', 20, 345)), paper('a4'), usual)).length).toBeGreaterThan(1);
  });

  test('any piece that fits in some turn is never split', () => {
    const sheet = paper('a4');
    const [width, height] = [sheet.width - 2 * EDGE_MARGIN_MM, sheet.height - EDGE_MARGIN_MM - BOTTOM_MARGIN_MM];
    const fitsTurned = (w: number, h: number): boolean =>
      Array.from({ length: 180 }, (_, degrees) => (degrees * Math.PI) / 180).some((turn) => {
        const corners = [
          [0, 0],
          [w, 0],
          [w, h],
          [0, h],
        ].map(([x = 0, y = 0]) => rotate({ x, y }, turn));
        const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
        return Math.max(...xs) - Math.min(...xs) < width && Math.max(...ys) - Math.min(...ys) < height;
      });
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 340, noNaN: true }),
        fc.double({ min: 5, max: 340, noNaN: true }),
        (w, h) => {
          fc.pre(fitsTurned(w, h));
          expect(tiles(layOut(of(oblong('any', w, h)), sheet, { effort: 1, seed: 1 }))).toEqual([]);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('random oblongs never overlap', () => {
    const sides = fc.array(fc.tuple(fc.integer({ min: 8, max: 180 }), fc.integer({ min: 8, max: 240 })), {
      minLength: 2,
      maxLength: 9,
    });
    fc.assert(
      fc.property(sides, fc.integer(), (pairs, seed) => {
        const draft = of(...pairs.map(([w, h], i) => oblong(`p${i}`, w, h)));
        expect(clashes(draft, layOut(draft, paper('letter'), { effort: 1, seed }))).toBe(0);
      }),
      { numRuns: 30 },
    );
  });

  test('what the first page carries lies within a piece where there is no room beside it', () => {
    const draft = of(oblong('wide', 190, 255));
    const layout = layOut(draft, paper('a4'), usual);
    expect(layout.pages).toHaveLength(1);
    expect(furnitureClashes(draft, layout)).toEqual([]);
    const [page] = layout.pages;
    const moved = page && { ...page, card: { x: 0, y: 100, width: 85.6, height: 54 } };
    expect(moved && furnitureClashes(draft, { ...layout, pages: [moved] })).toContain('card');
  });

  test('the card stands upright where it has no room to lie level', () => {
    const draft = of(oblong('one', 135, 222), oblong('two', 135, 222));
    const layout = layOut(draft, paper('a4'), usual);
    expect(layout.pages).toHaveLength(2);
    expect(furnitureClashes(draft, layout)).toEqual([]);
    const { card, square } = layout.pages.find((page) => page.card) ?? {};
    if (!card || !square) return expect.fail('no card');
    expect(card.height).toBeGreaterThan(card.width);
    expect(square.y + square.height).toBeLessThan(card.y + card.height);
  });

  test('two pieces that no shift brings together on a page take two at least, however small', () => {
    const crossed = of(oblong('long', 100, 250), oblong('other', 100, 250));
    expect(layOut(crossed, paper('a4'), usual).least).toBe(2);
    const slim = of(oblong('long', 90, 250), oblong('other', 90, 250));
    expect(layOut(slim, paper('a4'), usual).least).toBe(1);
  });

  test('nor do three of which every two share a page, nor large ones that leave too few places for the rest', () => {
    const three = of(...[108, 109, 110].map((width) => oblong(`wide${width}`, width, 150)));
    expect(layOut(three, paper('a4'), usual)).toMatchObject({ least: 2, pages: { length: 2 } });
    const rest = [84, 85, 86].map((width) => oblong(`small${width}`, width, 100));
    const two = of(oblong('one', 100, 250), oblong('two', 110, 250), ...rest);
    expect(layOut(two, paper('a4'), usual)).toMatchObject({ least: 3, pages: { length: 3 } });
  });

  test('small pieces share one page, and what is said stands there too as soon as it has room', () => {
    const pages = (size: number) => layOut(handMade(size), paper('a4'), { effort: 40, seed: 1 }).pages;
    expect(pages(0.34).filter((page) => page.placed.length > 0)).toHaveLength(1);
    const [only, ...more] = pages(0.31);
    expect(more).toEqual([]);
    expect(only?.key).toBeDefined();
  });

  test('the same seed lays out alike; more effort never takes more pages', () => {
    const draft = handMade(0.8);
    expect(layOut(draft, paper('a4'), usual)).toEqual(layOut(draft, paper('a4'), usual));
    const pages = [1, 4, 16, 40].map((effort) => layOut(draft, paper('a4'), { effort, seed: 3 }).pages.length);
    expect(pages).toEqual([...pages].sort((a, b) => b - a));
  });

  test('pieces on the fold are halves, or whole where asked', () => {
    const draft = handMade(0.7);
    const wholes = (halves: boolean) =>
      layOut(draft, paper('a3'), { ...usual, halves }).pages.flatMap((page) =>
        page.placed.filter((placed) => placed.whole),
      );
    expect(wholes(true)).toEqual([]);
    expect(wholes(false).map((placed) => draft.pieces[placed.piece]?.onFold)).toEqual([true, true, true, true]);
  });

  test.each(['a0', 'roll:914'])('a toy of a metre fits one page of %s', (id) => {
    expect(layOut(handMade(2.6), paper(id), usual).pages).toHaveLength(1);
  });

  test('a roll is as long as its pieces and words need', () => {
    const draft = handMade(1);
    const [page] = layOut(draft, paper('roll:914'), usual).pages;
    const words = page?.notes?.words ?? expect.fail('words have room');
    const pieces = Math.max(...(page ? outlines(draft, page) : []).flat().map((p) => p.y));
    const lowest = Math.max(pieces, words.y + words.height);
    expect(page?.height).toBeGreaterThanOrEqual(lowest + BOTTOM_MARGIN_MM - 1e-6);
    expect(page?.height).toBeLessThan(lowest + BOTTOM_MARGIN_MM + 2);
  });
});
