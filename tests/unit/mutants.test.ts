import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { breaks } from '../mutants';
import { breaksIn, locate } from '../mutants/break';

test('every place to break is found, once, and breaking it changes it', () => {
  const lost: string[] = [];
  for (const each of breaks)
    try {
      const { file, broken } = locate(process.cwd(), each);
      if (broken === readFileSync(file, 'utf8')) lost.push(`${each.what}: the same as before`);
    } catch (error) {
      lost.push(String(error));
    }
  expect(lost).toEqual([]);
});

test('there are at least 60, each with a name of its own', () => {
  expect(breaks.length).toBeGreaterThanOrEqual(60);
  expect(new Set(breaks.map(({ what }) => what)).size).toBe(breaks.length);
});

test('a place that is not there, or there twice, is told', () => {
  const one = (from: string) => breaksIn('tests/mutants', [{ what: 'x', from, to: '', tests: '' }]);
  for (const from of ['no such words anywhere but in this test'.split(' ').join('_'), 'what:'])
    for (const each of one(from)) expect(() => locate(process.cwd(), each)).toThrow(/places/);
});
