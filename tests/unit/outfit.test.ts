import { expect, test } from 'vitest';
import { type Draft, draft, fullOrder } from '../../app/drafting/draft';
import { garmentsIn, ownerOf, together } from '../../app/drafting/outfit';
import { pagesInk } from '../../app/drafting/output/page-ink';
import { findPaper, layOut } from '../../app/drafting/sheets';
import { outfitOf } from '../../app/dressed/outfit-of';
import { bodyFrom } from '../../app/measuring';
import { createSay } from '../../app/words';
import { buildCard, builds } from '../toys/builds';

const [bear] = builds.map((build) => buildCard(build));
const body = bear ? bodyFrom(bear) : raise();

function made(garment: string, more: object = {}): Draft {
  const full = fullOrder({ garment, ...more }, '2026-11-26');
  if (!full.ok) return raise();
  const outcome = draft(body, full.order, full.garment, 'Moss');
  return outcome.ok ? outcome.draft : raise();
}

function raise(): never {
  throw new Error('refused');
}

const a4 = findPaper('a4') ?? raise();
const lay = (drafted: Draft) => layOut(drafted, a4, { effort: 10, seed: 1 });
const [tee, trousers] = [made('tee', { cloth: 'jersey' }), made('trousers', { cloth: 'quilting-cotton' })];
const both = together([tee, trousers]);

test('an outfit is its garments, each piece its own garment’s', () => {
  expect(garmentsIn(both)).toEqual([tee, trousers]);
  expect(both.pieces.map((_, index) => ownerOf(both, index))).toEqual([
    ...tee.pieces.map(() => tee),
    ...trousers.pieces.map(() => trousers),
  ]);
  expect(together([tee])).toBe(tee);
  expect(garmentsIn(tee)).toEqual([tee]);
  expect(() => together([])).toThrow(RangeError);
});

test('all of it lies on the same sheets, no more of them than one after the other, and every piece once', () => {
  const layout = lay(both);
  const placed = layout.pages.flatMap((page) => page.placed);
  // A piece larger than the paper lies on several pages.
  const whole = placed.filter(({ window }) => !window).map(({ piece }) => piece);
  expect([...new Set(placed.map(({ piece }) => piece))].toSorted((a, b) => a - b)).toEqual(
    both.pieces.map((_, index) => index),
  );
  expect(new Set(whole).size).toBe(whole.length);
  expect(layout.pages.length).toBeLessThan(lay(tee).pages.length + lay(trousers).pages.length);
});

test('the paper names both garments, their cloths, and on each piece the one it belongs to', async () => {
  const say = await createSay('en');
  const layout = lay(both);
  const lettering = { say, units: 'in', widthOf: (text: string) => text.length * 1.8 } as const;
  const words = layout.pages
    .flatMap(pagesInk(both, layout, lettering))
    .flatMap((ink) => (ink.kind === 'words' ? [ink.text] : []))
    .join(' ');
  expect(words.match(/Moss’s trousers/g)?.length).toBeGreaterThanOrEqual(trousers.pieces.length);
  expect(words.match(/Moss’s tee(?!,)/g)?.length).toBe(tee.pieces.length);
  expect(words).toContain('Tee, Trousers');
  expect(words).toContain('Moss’s tee, trousers');
  expect(words).toContain('jersey');
  expect(words).toMatch(/cotton/);
});

test('the toy wears all of it', () => {
  const worn = outfitOf(both, body);
  expect([worn.top, worn.sleeve, worn.legs].map((part) => part !== null)).toEqual([true, true, true]);
  expect(outfitOf(tee, body).legs).toBeNull();
});
