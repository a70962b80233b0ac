import { expect, test } from 'vitest';
import { bodyFrom } from '../../app/measuring';

const bodyOf = (readings: readonly number[], corrections = {}) =>
  bodyFrom({ toy: { body: 'upright', traits: {} }, readings: { 'chest-girth': readings }, corrections });
const giveOf = (...readings: number[]) => bodyOf(readings).sizes['chest-girth']?.give;

test('a tape over fur strays by 2.4 %, by 1 mm at least (common practice, no source)', () => {
  expect(giveOf(500)).toBeCloseTo(12, 9);
  expect(giveOf(20)).toBe(1);
});

test('four readings that agree stray half as far as one: the error of a mean', () =>
  expect(giveOf(500, 500, 500, 500)).toBeCloseTo(6, 9));

test('readings far apart give as far as the middle is from either', () => expect(giveOf(480, 520)).toBeCloseTo(20, 9));

test('what was learnt from trying on belongs to the body', () => {
  expect(bodyOf([400], { hem: 3, hoodCrown: -2 }).corrections).toEqual({ hem: 3, hoodCrown: -2 });
  expect(bodyOf([400]).corrections).toEqual({});
});
