import { expect, test } from 'vitest';
import { formatLength, type Hand, parseLength } from '../../app/body';
import { shownLength, spoken } from '../../app/parts';
import { createSay } from '../../app/words';

const say = await createSay('en');
const inches: Hand = { unit: 'in', locale: 'en-US' };

test.each([
  [444.5, '17 and 1 half inches'],
  [25.4 * 17.6875, '17 and 11 sixteenths inches'],
  [9.525, '3 eighths inch'],
  [25.4, '1 inch'],
  [508, '20 inches'],
])('%d mm is spoken as %s', (mm, words) => {
  expect(spoken(shownLength(mm, inches), inches, say)).toBe(words);
});

test('lengths within a sentence are spoken, all else is left', () => {
  const cm: Hand = { unit: 'cm', locale: 'en-GB' };
  expect(spoken('2 readings, ⅛\u00a0in apart: 17 in all', inches, say)).toBe(
    '2 readings, 1 eighth inch apart: 17 in all',
  );
  expect(spoken(`Fold ${shownLength(15, cm)} in.`, cm, say)).toBe('Fold 1.5 centimetres in.');
});

test('where words run right to left a length is set apart and its number runs as on the tape', () => {
  const arabic: Hand = { unit: 'in', locale: 'ar-EG' };
  const written = formatLength(444.5, arabic);
  expect(written).toBe('\u2067\u206617 1/2\u2069\u00a0بوصة\u2069');
  expect(parseLength(written, arabic)).toEqual({ ok: true, mm: 444.5 });
  expect(shownLength(444.5, arabic, true)).toBe('\u206617½\u2069');
  expect(formatLength(444.5, arabic, true)).toBe('17 1/2');
  expect(formatLength(444.5, { unit: 'cm', locale: 'ja' })).toBe('44.5\u00a0cm');
});
