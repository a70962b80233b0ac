import { expect, test } from 'vitest';
import { setIn, setWithin } from '../../app/drafting/output/flow';
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

test('words are set as large as their box allows', () => {
  const words = [{ text: 'aaaa aaaa' }];
  const sizes = [12, 10, 8];
  expect(setWithin(words, { width: 100, height: 100 }, sizes, widthOf).lines[0]?.size).toBe(12);
  expect(setWithin(words, { width: 20, height: 4.6 }, sizes, widthOf).lines[0]?.size).toBe(10);
  expect(setWithin(words, { width: 1, height: 1 }, sizes, widthOf).lines[0]?.size).toBe(8);
});
