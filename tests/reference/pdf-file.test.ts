import { beforeAll, describe, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import type { Point } from '../../app/drafting/geometry';
import { lettersWithout, toPdf } from '../../app/drafting/output';
import { findPaper, type Layout, layOut } from '../../app/drafting/sheets';
import { createSay } from '../../app/words';
import { handMade } from '../toys/drafts';
import { readPdf } from './pdf-reading';

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

const laid = (draft: Draft, paper: string): Layout =>
  layOut(draft, findPaper(paper) ?? expect.fail(`no paper ${paper}`), { effort: 4, seed: 1 });
const printed = async (draft: Draft, layout: Layout) => readPdf(toPdf([{ draft, layout }], { say, units: 'in' }));

describe('the file', () => {
  const draft = handMade(1);
  const layout = laid(draft, 'a4');

  test('is the same bytes every time, in every time zone', () => {
    const first = toPdf([{ draft, layout }], { say, units: 'cm' });
    const zone = process.env.TZ;
    process.env.TZ = 'Pacific/Kiritimati';
    const second = toPdf([{ draft, layout }], { say, units: 'cm' });
    process.env.TZ = zone;
    expect(Buffer.compare(first, second)).toBe(0);
    expect(
      Buffer.compare(first, toPdf([{ draft: { ...draft, toy: 'Thistle' }, layout }], { say, units: 'cm' })),
    ).not.toBe(0);
  });

  test('asks viewers not to scale, and says what it is', async () => {
    const { preferences, info } = await printed(draft, layout);
    expect(preferences).toMatchObject({ PrintScaling: 'None', PickTrayByPDFSize: true });
    expect(info).toMatchObject({ Title: 'Bramble’s hooded top', Creator: `Hemling ${draft.engine}` });
  });

  test('names toy, garment, date and engine, and every piece with how many to cut', async () => {
    const { pages } = await printed(draft, layout);
    const words = pages.flatMap((page) => page.texts.map((text) => text.text)).join('\n');
    for (const found of ['Bramble', 'Hooded top', 'Nov 20, 2026', 'Hemling 0.1.0', 'Print at 100%', 'actual size'])
      expect(words).toContain(found);
    for (const name of ['Front', 'Back', 'Sleeve', 'Hood', 'Hood strip', 'Slit facing'])
      expect(words).toMatch(new RegExp(`^${name}$`, 'm'));
    expect(words.match(/Cut 1 on the fold/g)).toHaveLength(4);
    expect(words.match(/Cut 2, 1 of them mirrored/g)).toHaveLength(2);
  });

  test('draws a box for a letter its fonts lack, and says which', async () => {
    const named = { ...draft, toy: 'Bär 熊' };
    expect(lettersWithout(`${named.toy} 🧸`)).toEqual({ boxes: ['熊'], pictures: ['🧸'] });
    const boxes = async (each: Draft) =>
      (await printed(each, layout)).pages
        .flatMap((page) => page.strokes)
        .filter(({ points }) => points.length === 5 && isSquare(points)).length;
    expect(await boxes(named)).toBeGreaterThan(await boxes(draft));
    const { pages } = await printed(named, layout);
    expect(pages[0]?.texts.map((text) => text.text)).toContain('Bär');
  });
});

test('a letter the fonts lack is drawn as the picture handed in', async () => {
  const draft = handMade(0.5, { toy: '熊' });
  const asked: string[] = [];
  const glyphs = (letter: string, size: number) => {
    asked.push(letter);
    return { png: DOT, width: size * 0.35, height: size * 0.35, below: 0 };
  };
  const layout = laid(draft, 'a4');
  const withPictures = toPdf([{ draft, layout }], {
    ...{ say, units: 'cm' },
    script: { language: 'en', direction: 'ltr', faces: () => undefined, glyphs },
  });
  expect(new Set(asked)).toEqual(new Set(['熊']));
  const text = Buffer.from(withPictures).toString('latin1');
  expect(text).toContain('/Subtype /Image');
  expect(Buffer.from(toPdf([{ draft, layout }], { say, units: 'cm' })).toString('latin1')).not.toContain(
    '/Subtype /Image',
  );
});

/** A PNG of one black dot. */
const DOT = new Uint8Array(
  Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==', 'base64'),
);

function isSquare(points: readonly Point[]): boolean {
  const sides = points.slice(1).map((p, i) => Math.hypot(p.x - (points[i]?.x ?? 0), p.y - (points[i]?.y ?? 0)));
  return sides.every((side) => Math.abs(side - (sides[0] ?? 0)) < 0.01 && side < 6);
}
