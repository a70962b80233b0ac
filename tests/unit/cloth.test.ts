import polygonClipping from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import { bought } from '../../app/drafting/catalogue';
import { type Answer, type Cut, cutsOf, layOnCloth, type Stuff } from '../../app/drafting/cloth';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { garments } from '../../app/drafting/garments';
import type { Point } from '../../app/drafting/geometry';
import { toClothPdf } from '../../app/drafting/output';
import { bodyFrom, demoCards } from '../../app/measuring';
import { mayImprove } from '../../app/screens/cloth/may-improve';
import { createSay } from '../../app/words';
import { readPdf } from '../reference/pdf-reading';
import { handMade, oblong } from '../toys/drafts';
import { boxOf, outside, overlaps, toOutline } from './packing-apart';

/** Every garment of one of the demo toys it suits, one after the other. */
const drafts: readonly Draft[] = garments.flatMap((garment, turn) => {
  const suited = demoCards.filter((card) => garment.bodies.includes(card.toy.body));
  const card = suited[turn % suited.length];
  const full = fullOrder({ garment: garment.id }, card?.taken ?? '');
  if (!card || !full.ok) return [];
  const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
  return outcome.ok ? [outcome.draft] : [];
});

const wide: Stuff = { width: 1100, nap: false };
const p = (x: number, y: number): Point => ({ x, y });
const box = (width: number, height: number) => [p(0, 0), p(width, 0), p(width, height), p(0, height)];
const ringOf = (outline: readonly Point[]): [number, number][] => outline.map(({ x, y }) => [x, y]);
const of = (...pieces: Draft['pieces'][number][]): readonly Cut[] => cutsOf([handMade(1, { pieces })]);

function answer(cuts: readonly Cut[], stuff: Stuff, steps: number, seed = 1): Answer {
  let last: Answer | undefined;
  for (const found of layOnCloth(cuts, stuff, seed)) {
    last = found.best;
    if (found.steps >= steps) break;
  }
  return last ?? expect.fail('no answer');
}

function laidOf(found: Answer) {
  return found.kind === 'fits' ? found : expect.fail(`${found.kind} instead of fits`);
}

test('there is something to lay', () => expect(drafts.length).toBeGreaterThan(8));

test('cuts are what the cutting list says: every copy, half of them turned over where mirrored', () => {
  for (const made of drafts) {
    const cuts = cutsOf([made]);
    made.pieces.forEach((piece, index) => {
      const own = cuts.filter((cut) => cut.piece === index);
      expect(own).toHaveLength(piece.copies);
      expect(own.filter((cut) => cut.flipped)).toHaveLength(piece.mirrored ? piece.copies / 2 : 0);
    });
    expect(cuts).toHaveLength(made.pieces.reduce((sum, { copies }) => sum + copies, 0));
  }
});

describe('cloth sold by its width', () => {
  test.each([
    ['110 cm', wide],
    ['56 cm with a nap', { width: 560, nap: true }],
  ] as const)('%s: all lie on it, none overlapping, the grain along it', (_, stuff) => {
    for (const made of drafts) {
      const cuts = cutsOf([made]);
      const found = answer(cuts, stuff, 400);
      if (found.kind === 'cannot') {
        expect(boxOf(found.cut.outline).bottom - boxOf(found.cut.outline).top).toBeGreaterThan(stuff.width);
        continue;
      }
      const { laid, length } = laidOf(found);
      expect(laid.map(({ cut }) => cut)).toEqual(cuts);
      expect(overlaps(laid.map(({ outline }) => outline))).toEqual([]);
      for (const { outline, cut, turned } of laid) {
        const { left, right, top, bottom } = boxOf(outline);
        expect(Math.min(left, top)).toBeGreaterThanOrEqual(-1e-6);
        expect(right).toBeLessThanOrEqual(length + 1e-6);
        expect(bottom).toBeLessThanOrEqual(stuff.width + 1e-6);
        expect(turned && stuff.nap).toBe(false);
        const own = boxOf(cut.outline);
        expect(right - left).toBeCloseTo(own.right - own.left, 6);
      }
    }
  });

  test('several garments share it, and never take more than one after the other', () => {
    const [one, other] = [drafts[0], drafts[1]];
    if (!one || !other) return expect.fail('two drafts');
    const alone = [one, other].map((made) => laidOf(answer(cutsOf([made]), wide, 800)).length);
    const both = laidOf(answer(cutsOf([one, other]), wide, 1600));
    expect(both.laid).toHaveLength(cutsOf([one]).length + cutsOf([other]).length);
    expect(both.length).toBeLessThanOrEqual(alone.reduce((sum, each) => sum + each, 0));
  });

  test('a piece wider than the cloth cannot lie on it', () => {
    expect(answer(of(oblong('long', 300, 100)), { width: 290, nap: false }, 100)).toMatchObject({
      kind: 'cannot',
      why: 'size',
    });
  });
});

describe('a scrap', () => {
  const four = of(...[1, 2, 3, 4].map((n) => oblong(`p${n}`, 48, 98)));

  test('that is enough is answered with a lay inside it', () => {
    const scrap = [p(0, 0), p(260, 20), p(300, 160), p(120, 140), p(20, 200)];
    const { laid } = laidOf(answer(four.slice(0, 3), { scrap, nap: false }, 60_000));
    expect(laid).toHaveLength(3);
    expect(overlaps(laid.map(({ outline }) => outline))).toEqual([]);
    for (const { outline } of laid) expect(outside(outline, scrap)).toBeLessThan(1e-6);
  });

  test('with a bay is laid around it, and stays clear of its edge by what that may be off', () => {
    const scrap = [p(0, 0), p(130, 5), p(125, 110), p(250, 120), p(255, 230), p(0, 240)];
    const give = 6;
    const { laid } = laidOf(answer(four, { scrap, give, nap: false }, 60_000));
    expect(laid).toHaveLength(4);
    expect(overlaps(laid.map(({ outline }) => outline))).toEqual([]);
    for (const { outline } of laid) {
      expect(outside(outline, scrap)).toBe(0);
      expect(Math.min(...outline.map((corner) => toOutline(corner, scrap)))).toBeGreaterThan(give - 1e-3);
      expect(Math.min(...scrap.map((corner) => toOutline(corner, outline)))).toBeGreaterThan(give - 1e-3);
      const cloth = polygonClipping.difference([ringOf(outline)], [ringOf(scrap)]);
      expect(cloth).toEqual([]);
    }
  });

  test('cannot be enough only where it cannot be anywhere within its give', () => {
    const short = of(oblong('p', 38, 98));
    expect(answer(short, { scrap: box(95, 60), nap: false }, 100)).toMatchObject({ kind: 'cannot' });
    expect(answer(short, { scrap: box(95, 60), give: 1, nap: false }, 100)).toMatchObject({ kind: 'cannot' });
    expect(answer(short, { scrap: box(95, 60), give: 3, nap: false }, 100)).toMatchObject({ kind: 'searching' });
    expect(answer(short, { scrap: box(95, 60), give: 40, nap: false }, 100)).toMatchObject({ kind: 'searching' });
  });

  test('with hardly room to spare is filled', () => {
    expect(laidOf(answer(four, { scrap: box(200, 100), nap: false }, 60_000)).laid).toHaveLength(4);
  });

  test('of too little cloth cannot be enough, nor one shorter than the longest piece', () => {
    expect(answer(four, { scrap: box(130, 130), nap: false }, 100)).toMatchObject({ kind: 'cannot', why: 'area' });
    expect(answer(four, { scrap: box(97, 900), nap: false }, 100)).toMatchObject({ kind: 'cannot', why: 'size' });
  });

  test('that no search fits says what had no room, and no more', () => {
    const found = answer(four, { scrap: box(190, 110), nap: false }, 3000);
    expect(found).toMatchObject({ kind: 'searching' });
    expect(found.kind === 'searching' && found.left.length).toBe(2);
  });
});

test('a longer look is offered only where it may find anything', () => {
  const one = of(oblong('front', 100, 60));
  const two = of(oblong('front', 100, 60), oblong('back', 90, 60));
  const scrap: Stuff = { scrap: box(300, 200), give: 1, nap: false };
  const offered = (cuts: readonly Cut[], stuff: Stuff) => mayImprove(answer(cuts, stuff, 100), stuff);
  expect([offered(one, wide), offered(two, wide), offered(two, scrap)]).toEqual([false, true, false]);
  expect(mayImprove({ kind: 'searching', left: two }, scrap)).toBe(true);
  expect(offered(two, { ...scrap, scrap: box(20, 20) })).toBe(false);
});

test('linings, facings, ribs and what binds an edge are told apart', () => {
  const names = ['front', 'front-lining', 'neck-facing', 'cuff-rib', 'cuff-band', 'armhole-binding'];
  const cuts = of(...names.map((name) => oblong(name, 20, 30)));
  expect(cuts.map(({ layer }) => layer)).toEqual(['main', 'lining', 'facing', 'rib', 'bias', 'bias']);
});

test('the lay on paper: every cut once, a number on each, within the page', async () => {
  const say = await createSay('en');
  const made = drafts[0] ?? expect.fail('no draft');
  const { laid, length } = laidOf(answer(cutsOf([made]), wide, 100));
  const [page] = (await readPdf(toClothPdf({ drafts: [made], laid, length, stuff: wide }, { say, units: 'cm' }))).pages;
  if (!page) return expect.fail('no page');
  expect(page.fills).toHaveLength(laid.length);
  for (const { number } of laid) expect(page.texts.map(({ text }) => text)).toContain(String(number));
  for (const { x, y } of page.strokes.flatMap(({ points }) => points)) {
    expect(Math.min(x, y)).toBeGreaterThan(8);
    expect(x).toBeLessThan(page.width - 8);
    expect(y).toBeLessThan(page.height - 17);
  }
});

test('in large print a lay has a number on each piece and its name, nothing small, nothing off the paper', async () => {
  const say = await createSay('en');
  const both = drafts.slice(0, 2);
  const { laid, length } = laidOf(answer(cutsOf(both), wide, 100));
  const written = toClothPdf({ drafts: both, laid, length, stuff: wide }, { say, units: 'cm', print: 'large' });
  const { pages } = await readPdf(written);
  const texts = pages.flatMap((page) => page.texts);
  for (const { number } of laid) {
    expect(texts.filter(({ text }) => text === String(number)).length).toBeGreaterThan(0);
    expect(texts.filter(({ text }) => text.startsWith(`${number} `)).length).toBe(1);
  }
  expect(texts.filter(({ size }) => size < 18)).toEqual([]);
  for (const { width, height, strokes, texts: own } of pages) {
    for (const { x, y } of [...strokes.flatMap(({ points }) => points), ...own.map(({ at }) => at)]) {
      expect(Math.min(x, y)).toBeGreaterThan(8);
      expect(x).toBeLessThan(width - 8);
      expect(y).toBeLessThan(height - 17);
    }
  }
});

test('a number stands where there is cloth all round it', () => {
  for (const made of drafts) {
    for (const { outline, spot } of laidOf(answer(cutsOf([made]), { width: 1500, nap: true }, 1)).laid) {
      const ring = [[...outline, ...outline.slice(0, 1)].map(({ x, y }): [number, number] => [x, y])];
      const dot = [
        [
          [-1, -1],
          [1, -1],
          [1, 1],
          [-1, 1],
          [-1, -1],
        ].map(([x = 0, y = 0]): [number, number] => [spot.x + x, spot.y + y]),
      ];
      expect(polygonClipping.difference([dot], [ring])).toEqual([]);
    }
  }
});

test('what is bought is never less than the lay takes', () => {
  expect(bought(400, 'cm')).toBe(400);
  expect(bought(400.2, 'cm')).toBe(410);
  expect(bought(25.4 * 10.1, 'in')).toBeCloseTo(25.4 * 10.5, 9);
});
