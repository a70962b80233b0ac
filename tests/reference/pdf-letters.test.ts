import { expect, test } from 'vitest';
import { readFace } from '../../app/command/faces';
import { type Direction, facesAtHand, levelsOf } from '../../app/drafting/faces';
import type { Words } from '../../app/drafting/output';
import { blankPdf } from '../../app/drafting/output/pdf';
import { pdfBrush } from '../../app/drafting/output/pdf-brush';
import { readPdf } from './pdf-reading';

const atHand = facesAtHand(readFace);
const ink = (text: string, bold = false): Words => ({
  ...{ kind: 'words', layer: 'words', at: { x: 20, y: 40 }, turn: 0, size: 12, bold, text },
});

async function written(text: string, direction: Direction, bold = false) {
  return atHand.make((faces) => {
    const script = { language: direction === 'rtl' ? 'ar' : 'en', direction, faces };
    const about = { id: text, title: 'A page', script };
    const pdf = blankPdf([120, 80], { engine: '0.1.0', order: { date: '2026-11-20' } }, about);
    const brush = pdfBrush(pdf, 1, script);
    brush.draw(ink(text, bold));
    return { bytes: new Uint8Array(pdf.output('arraybuffer')), width: brush.widthOf(text, 12, bold) };
  });
}

/** What stands where: the order of words as seen from the left, and what a reader makes of each. */
const lines: readonly (readonly [text: string, direction: Direction, seen: readonly string[]])[] = [
  ['مريم 🧸 Ōkami', 'ltr', ['مريم', 'Ōkami']],
  ['مريم 🧸 Ōkami', 'rtl', ['Ōkami', 'مريم']],
  ['سترة: Ōkami', 'rtl', ['Ōkami', 'سترة:']],
  ['دبدوب (صغير)', 'ltr', ['دبدوب (صغير)']],
  ['مَرْيَم لا إله', 'rtl', ['مَرْيَم لا إله']],
  ['خياطة \u206612.5 cm\u2069، حاشية \u20663 cm\u2069', 'rtl', ['3 cm', 'حاشية', '12.5 cm', 'خياطة']],
  ['حاشية \u20663 cm\u2069،', 'rtl', ['،', '3 cm', 'حاشية']],
  ['くまの熊「大」', 'ltr', ['くまの熊「大」']],
  ['Ёжик, Λουλού, Đặng', 'ltr', ['Ёжик, Λουλού, Đặng']],
];

test.each(lines)('%s, running %s, is read as it was meant', async (text, direction, seen) => {
  const { pages, info } = await readPdf((await written(text, direction)).bytes);
  const items = [...(pages[0]?.texts ?? [])].sort((a, b) => a.at.x - b.at.x);
  const found = items.map((item) => item.text).join('');
  const tidy = (each: string) => [...each.normalize('NFKC').replace(/\s/g, '')].sort().join('');
  expect(tidy(found)).toBe(tidy(text.replace(/[🧸\u2066\u2069]/gu, '')));
  for (const each of seen) expect(found.normalize('NFKC')).toContain(each);
  const places = seen.map((each) => found.normalize('NFKC').indexOf(each));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(info).toMatchObject({ Title: 'A page', Language: direction === 'rtl' ? 'ar' : 'en' });
});

test('a picture between a name’s parts belongs to neither, and stands between them whichever way the name runs', () => {
  const seen = (text: string, direction: Direction) => levelsOf(text, direction).map((level) => level.text);
  const apart = '\u2068مريم 🧸 Ōkami\u2069';
  expect(seen('مريم 🧸 Ōkami', 'rtl')).toEqual(['Ōkami', 'مريم 🧸 ']);
  expect(seen('مريم 🧸 Ōkami', 'ltr')).toEqual(['مريم', ' 🧸 Ōkami']);
  expect(seen(apart, 'ltr').map((each) => each.replace(/[\u2068\u2069]/g, ''))).toEqual(['', 'Ōkami', 'مريم 🧸 ', '']);
});

test.each([
  ['Rosie 🧸 Bear', 'Rosie Bear'],
  ['\u2068🧸 Rosie 🧸\u2069: cape', 'Rosie: cape'],
  ['Rosie 🧸', 'Rosie'],
])('where nobody draws pictures, “%s” leaves no needless space', async (text, left) => {
  const { pages } = await readPdf((await written(text, 'ltr')).bytes);
  expect(pages[0]?.texts.map((each) => each.text).join('')).toBe(left);
});

test('a bold word is as wide as it is drawn, and only what was used of a face lies in the file', async () => {
  const { bytes, width } = await written('くまの熊', 'ltr', true);
  expect(width).toBeCloseTo(4 * 12 * (25.4 / 72), 6);
  expect(bytes.length).toBeLessThan(6000);
  const { pages } = await readPdf(bytes);
  expect(pages[0]?.texts.map(({ text, at }) => [text, Math.round(at.x)])).toEqual([['くまの熊', 20]]);
});

test.each(
  ['œ', 'Œ', '€', 'š', 'Š', 'ž', 'Ž'].flatMap(
    (letter) =>
      [
        [letter, false],
        [letter, true],
      ] as const,
  ),
)('what follows %s stands clear of it, bold: %s', async (letter, bold) => {
  const { pages } = await readPdf((await written(`${letter}½`, 'ltr', bold)).bytes);
  const [before, after] = [...(pages[0]?.texts ?? [])].sort((a, b) => a.at.x - b.at.x);
  expect(before?.text).toBe(letter);
  expect((after?.at.x ?? 0) - 20).toBeCloseTo(before?.width ?? 0, 2);
});
