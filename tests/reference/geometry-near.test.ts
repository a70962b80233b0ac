import { describe, expect, it } from 'vitest';
import { type Path, type Point, point, polyline } from '../../app/drafting/geometry';
import { apart, outsideBy, strays, tooNear, within } from '../geometry/near';
import { sewn } from '../geometry/outlines';

// The measures the other tests judge by, shown to see a fiftieth of a millimetre.

const side = 80;
const seam = sides(square(0));
const edges = seam.map((curve): Path => [curve]);

describe('the measures of a cut line', () => {
  it('call a true one true', () => {
    expect(tooNear(square(6), seam, 6)).toBeLessThan(1e-9);
    expect(strays(square(6), sewn(edges, 6), 20, 0)).toBeLessThan(1e-9);
    expect(outsideBy(seam, square(0))).toBeLessThan(1e-9);
    expect(apart(square(6), square(6).slice(1).concat(square(6).slice(0, 1)))).toBe(0);
  });

  it('see it 0.02 mm too near, and too far', () => {
    expect(tooNear(square(5.98), seam, 6)).toBeCloseTo(0.02, 9);
    expect(strays(square(5.98), sewn(edges, 6), 20, 0)).toBeGreaterThan(0.017);
    expect(strays(square(6.02), sewn(edges, 6), 20, 0)).toBeGreaterThan(0.017);
  });

  it('see one point of it 0.02 mm off, on one side only', () => {
    const dented = [...square(6).slice(0, 1), point(40, -5.98), ...square(6).slice(1)];
    expect(tooNear(dented, seam, 6)).toBeGreaterThan(0.017);
    expect(strays(dented, sewn(edges, 6), 20, 0)).toBeGreaterThan(0.017);
    expect(apart(dented, square(6))).toBeGreaterThan(0.017);
    const bulged = [...square(6).slice(0, 1), point(40, -6.02), ...square(6).slice(1)];
    expect(tooNear(bulged, seam, 6)).toBeLessThan(1e-9);
    expect(strays(bulged, sewn(edges, 6), 20, 0)).toBeGreaterThan(0.017);
  });

  it('see a corner of the seam line cut off by 0.02 mm', () => {
    const cut = [point(0.03, 0), ...square(0).slice(1), point(0, 0.03)];
    expect(outsideBy(seam, cut)).toBeGreaterThan(0.017);
    expect(within(point(0.005, 0.005), cut)).toBe(false);
    expect(within(point(0.05, 0.05), cut)).toBe(true);
  });
});

function square(outside: number): Point[] {
  const [low, high] = [-outside, side + outside];
  return [point(low, low), point(high, low), point(high, high), point(low, high)];
}

function sides(corners: readonly Point[]): Path {
  return polyline([...corners, ...corners.slice(0, 1)]);
}
