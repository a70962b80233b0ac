import { expect, test } from 'vitest';
import { formats } from '../../app/words/formats';

test('angles come in radians and are said in whole degrees', () => {
  expect(formats.angle?.(Math.PI / 2, 'en', {})).toBe('90°');
  expect(formats.angle?.(0.35, 'en', {})).toBe('20°');
});

test('shares are said in whole percents, dates as the calendar has them', () => {
  expect(formats.percent?.(0.347, 'en', {})).toBe('35%');
  expect(formats.date?.('2026-11-01', 'en-GB', {})).toBe('1 Nov 2026');
});
