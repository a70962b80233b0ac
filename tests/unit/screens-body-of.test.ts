import { expect, test } from 'vitest';
import { bodyOf } from '../../app/screens/shared/making/body-of';
import type { ReadingsByMeasure } from '../../app/storage';

const reading = (from: 'tape' | 'photo', mm: number) => ({
  id: `${from}${mm}`,
  toyId: 'a',
  measureId: 'armhole-depth',
  mm,
  from,
  takenAt: 0,
  set: 0,
});
const bodyWith = (...taken: ReturnType<typeof reading>[]) =>
  bodyOf({ toy: undefined, readings: { 'armhole-depth': taken } as unknown as ReadingsByMeasure }).sizes[
    'armhole-depth'
  ];

test('a length off a photo says so and gives more than one off the tape', () => {
  const [tape, photo] = [bodyWith(reading('tape', 200)), bodyWith(reading('photo', 200))];
  expect([tape?.from, photo?.from]).toEqual(['tape', 'photo']);
  expect(photo?.give).toBeGreaterThan(tape?.give ?? Number.POSITIVE_INFINITY);
});

test('a second reading by tape does not hide that the first was off a photo', () => {
  expect(bodyWith(reading('photo', 80), reading('tape', 82))?.from).toBe('photo');
});
