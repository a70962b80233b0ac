import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import IsSimpleOp from 'jsts/org/locationtech/jts/operation/IsSimpleOp.js';
import { describe, expect, it } from 'vitest';
import { type Point, point, polygonIsSimple, polyline, ringIsSimple } from '../../app/drafting/geometry';
import { seeded } from '../toys/seeded';

describe('rings that cross themselves', () => {
  it('are those an independent library finds, over 3,000 random polygons', () => {
    const random = seeded(21);
    let simple = 0;
    for (let i = 0; i < 3000; i += 1) {
      const polygon = Array.from({ length: 3 + (i % 6) }, () => point(100 * random(), 100 * random()));
      expect(polygonIsSimple(polygon), JSON.stringify(polygon)).toBe(independently(polygon));
      simple += polygonIsSimple(polygon) ? 1 : 0;
    }
    expect(simple).toBeGreaterThan(600);
    expect(simple).toBeLessThan(2400);
  });

  it('are found where they only touch: on a grid, corners fall on corners and on sides', () => {
    const random = seeded(22);
    const whole = () => Math.floor(6 * random());
    for (let i = 0; i < 3000; i += 1) {
      const polygon = Array.from({ length: 4 + (i % 4) }, () => point(whole(), whole()));
      // The library calls a corner passed over twice in a row no fault, and straight spikes none: so leave those out.
      if (hasSpike(polygon)) continue;
      expect(polygonIsSimple(polygon), JSON.stringify(polygon)).toBe(independently(polygon));
    }
  });

  it.each([
    ['a square', [0, 0, 10, 0, 10, 10, 0, 10], true],
    ['a bow tie', [0, 0, 10, 10, 10, 0, 0, 10], false],
    ['a corner on a side', [0, 0, 10, 0, 10, 10, 5, 0, 0, 10], false],
    ['a corner a thousandth of a millimetre off a side', [0, 0, 10, 0, 10, 10, 5, 0.001, 0, 10], true],
    ['a corner a thousandth of a millimetre past a side', [0, 0, 10, 0, 10, 10, 5, -0.001, 0, 10], false],
    ['a spike', [0, 0, 10, 0, 20, 0, 10, 0, 10, 10], false],
    ['points along a side', [0, 0, 5, 0, 10, 0, 10, 10, 0, 10], true],
    ['two points', [0, 0, 10, 0], false],
    ['a hole in the numbers', [0, 0, 10, 0, Number.NaN, 10], false],
  ] as const)('%s', (_, numbers, simple) => {
    const polygon = numbers.flatMap((x, i) => (i % 2 === 0 ? [point(x, numbers[i + 1] ?? 0)] : []));
    expect(polygonIsSimple(polygon)).toBe(simple);
    expect(ringIsSimple(polyline([...polygon, ...polygon.slice(0, 1)]))).toBe(simple);
  });
});

function independently(polygon: readonly Point[]): boolean {
  const coordinates = [...polygon, ...polygon.slice(0, 1)].map((p) => new Coordinate(p.x, p.y));
  return new IsSimpleOp(new GeometryFactory().createLinearRing(coordinates)).isSimple();
}

function hasSpike(polygon: readonly Point[]): boolean {
  return polygon.some((p, i) => {
    const before = polygon[(i + polygon.length - 1) % polygon.length] ?? p;
    const after = polygon[(i + 1) % polygon.length] ?? p;
    const turn = (p.x - before.x) * (after.y - p.y) - (p.y - before.y) * (after.x - p.x);
    return turn === 0 && (p.x - before.x) * (after.x - p.x) + (p.y - before.y) * (after.y - p.y) <= 0;
  });
}
