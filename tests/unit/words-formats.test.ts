import { expect, test } from 'vitest';
import { formats } from '../../app/words/formats';

test('angles come in radians and are said in whole degrees', () => {
  expect(formats.angle?.(Math.PI / 2, 'en', {})).toBe('90°');
  expect(formats.angle?.(0.35, 'en', {})).toBe('20°');
});

test('names are listed, and set in a row, as the language does it', () => {
  const names = ['Oat', 'Moss', 'Fig'];
  expect([formats.list?.(names, 'en-GB', {}), formats.list?.(names, 'de', {})]).toEqual([
    'Oat, Moss and Fig',
    'Oat, Moss und Fig',
  ]);
  expect([formats.row?.(names, 'en', {}), formats.row?.(['Oat'], 'en', {})]).toEqual(['Oat, Moss, Fig', 'Oat']);
});

test('tenths are parted as the language parts them, in the digits of the tape', () => {
  expect([formats.tenth?.(2.5, 'en', {}), formats.tenth?.(2.5, 'es', {}), formats.tenth?.(2, 'ar-EG', {})]).toEqual([
    '2.5',
    '2,5',
    '2',
  ]);
});

test('shares are said in whole percents, dates as the calendar has them', () => {
  expect(formats.percent?.(0.347, 'en', {})).toBe('35%');
  expect(formats.date?.('2026-11-01', 'en-GB', {})).toBe('1 Nov 2026');
});
