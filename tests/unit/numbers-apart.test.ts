import { expect, test } from 'vitest';
import { apartIn } from '../../app/screens/sew/apart';

/** An edge beside another, with so many numbers on each, so far from the next. */
const beside = (count: number, gap: number) =>
  Array.from({ length: count }, (_, index) =>
    [0, 40].map((x) => ({ number: index + 1, at: { x, y: index * gap } })),
  ).flat();

test('numbers with room between them all stay', () => {
  expect(apartIn(beside(5, 16), 15)).toEqual(beside(5, 16));
});

test('of numbers that would lie on each other the ends stay, and what is left is counted anew', () => {
  const left = apartIn(beside(5, 8), 15);
  expect(left.map(({ number, at }) => [number, at.y])).toEqual([
    [1, 0],
    [1, 0],
    [2, 16],
    [2, 16],
    [3, 32],
    [3, 32],
  ]);
});

test('a single pair and no pair stay as they are', () => {
  expect(apartIn(beside(1, 0), 60)).toEqual(beside(1, 0));
  expect(apartIn([], 15)).toEqual([]);
});
