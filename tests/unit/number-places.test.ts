import { expect, it } from 'vitest';
import { numberPlaces } from '../../app/screens/shared/pieces/number-places';

/** A bow about a corner of its paper, as half a cape's neck: seen from the middle, outward lies along it. */
const bow = Array.from({ length: 12 }, (_, index) => {
  const angle = (index / 11) * (Math.PI / 2);
  return { x: 90 * Math.sin(angle), y: 110 - 90 * (1 - Math.cos(angle)) };
});
const size = 6;
const places = numberPlaces(bow, [bow], { x: 95, y: 140 }, size);

it('puts a number beside its point, off every point and line', () => {
  expect(places.size).toBeGreaterThan(bow.length / 2);
  for (const [number, place] of places) {
    const wide = (String(number).length * size) / 2;
    const hidden = bow.filter(({ x, y }) => Math.abs(x - place.x) < wide && Math.abs(y - place.y) < 0.65 * size);
    expect(hidden, String(number)).toEqual([]);
    const own = bow[number - 1] ?? { x: 0, y: 0 };
    expect(Math.hypot(place.x - own.x, place.y - own.y), String(number)).toBeCloseTo(1.7 * size);
  }
});

it('leaves out numbers that would lie over others', () => {
  const crowded = bow.map(({ x, y }) => ({ x: x / 8, y: y / 8 }));
  expect(numberPlaces(crowded, [crowded], { x: 12, y: 17 }, size).size).toBeLessThan(bow.length);
});
