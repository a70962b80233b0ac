import { expect, test } from 'vitest';
import { setIn, setWithin, wordsOf } from '../../app/drafting/output/flow';
import { runsOf } from '../../app/drafting/output/letters';

const widthOf = (text: string, size: number): number => text.length * size * 0.2;

test('halves and eighths are fractions; dates and prices are not', () => {
  expect(runsOf('seam 1/4 in')).toEqual([
    { kind: 'plain', text: 'seam ' },
    { kind: 'fraction', above: '1', below: '4' },
    { kind: 'plain', text: ' in' },
  ]);
  expect(runsOf('⅜')).toEqual([{ kind: 'fraction', above: '3', below: '8' }]);
  expect(runsOf('13/16')).toEqual([{ kind: 'fraction', above: '13', below: '16' }]);
  for (const text of ['20/11/2026', '1/3', '11/20/16']) expect(runsOf(text)).toEqual([{ kind: 'plain', text }]);
});

test('pictures come one by one, letters of a script as the word they are, marks and all', () => {
  expect(runsOf('é € “ü” – …')).toEqual([{ kind: 'plain', text: 'é € “ü” – …' }]);
  expect(runsOf('e\u0301')).toEqual([{ kind: 'plain', text: 'é' }]);
  expect(runsOf('a🧸👩‍👧b')).toEqual([
    { kind: 'plain', text: 'a' },
    { kind: 'missing', letters: '🧸', picture: true },
    { kind: 'missing', letters: '👩‍👧', picture: true },
    { kind: 'plain', text: 'b' },
  ]);
  expect(runsOf('хлеб и')).toEqual([
    { kind: 'missing', letters: 'хлеб', picture: false },
    { kind: 'plain', text: ' ' },
    { kind: 'missing', letters: 'и', picture: false },
  ]);
  expect(runsOf('')).toEqual([]);
});

test('no line is wider than its box; a long word is cut', () => {
  const { lines, width } = setIn([{ text: 'a bb ccc dddd' }, { text: 'eeeeeeeeeeeeeeeeeeee' }], 10, 16, widthOf);
  expect(lines.map((line) => line.text)).toEqual(['a bb ccc', 'dddd', 'eeeeeeee', 'eeeeeeee', 'eeee']);
  expect(width).toBeLessThanOrEqual(16);
});

test.each([
  ['「実際のサイズ」を選びます。', 18, ['「実際のサイズ」を', '選びます。']],
  ['縫い代\u00a00.6\u00a0cm、裾\u00a01.2\u00a0cm', 22, ['縫い代\u00a00.6\u00a0cm、', '裾\u00a01.2\u00a0cm']],
  ['まち針と縫い針は、始める前と後に数えます。', 18, ['まち針と縫い針は、', '始める前と後に', '数えます。']],
  [
    'ぬいぐるみには衿ぐりを97%の長さで、A4を1枚だけ',
    16,
    ['ぬいぐるみには', '衿ぐりを97%の', '長さで、A4を', '1枚だけ'],
  ],
  ['裁ち端を縫い代に、折り代\u00a00.6\u00a0cm', 20, ['裁ち端を縫い代に、', '折り代\u00a00.6\u00a0cm']],
  ['数えます。', 6, ['数え', 'ます。']],
  ['bb 3 3/4 b', 12, ['bb', '3 3/4', 'b']],
  ['قصّ قطعتين، إحداهما معكوسة', 26, ['قصّ قطعتين،', 'إحداهما', 'معكوسة']],
])('%s is broken where its script is', (text, width, expected) => {
  expect(setIn([{ text }], 10, width, widthOf).lines.map((line) => line.text)).toEqual(expected);
});

test('lines that run leftwards begin at the right end of their box, whichever way the box lies', () => {
  const leftwards = Object.assign((text: string, size: number) => widthOf(text, size), { direction: 'rtl' as const });
  const set = setIn([{ text: 'aaaa' }, { text: 'aa' }], 10, 40, leftwards);
  const box = { x: 5, y: 7, width: 40, height: 30 };
  expect(wordsOf(set, box, 'words').map(({ at }) => at.x)).toEqual([37, 41]);
  const up = wordsOf(set, box, 'words', 'up').map(({ at }) => at.y);
  expect(up[0]).toBeCloseTo(7 + 8, 6);
  expect(up[1]).toBeCloseTo(7 + 4, 6);
});

test('words are set as large as their box allows', () => {
  const words = [{ text: 'aaaa aaaa' }];
  const sizes = [12, 10, 8];
  expect(setWithin(words, { width: 100, height: 100 }, sizes, widthOf).lines[0]?.size).toBe(12);
  expect(setWithin(words, { width: 20, height: 4.6 }, sizes, widthOf).lines[0]?.size).toBe(10);
  expect(setWithin(words, { width: 1, height: 1 }, sizes, widthOf).lines[0]?.size).toBe(8);
});

test('a narrow space that no line breaks at is a space of the standard fonts, and what is around it stays one run', () => {
  expect(runsOf('«\u202fDos\u202f», 3\u00a0cm\u202f?')).toEqual([{ kind: 'plain', text: '« Dos », 3 cm ?' }]);
});
