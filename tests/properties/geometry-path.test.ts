import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  angleBetween,
  at,
  bounds,
  type Cubic,
  type Curve,
  cubic,
  curveLength,
  distance,
  end,
  endTangent,
  flatten,
  fromSvg,
  lengthTo,
  line,
  mirrorPath,
  type Path,
  type Point,
  paramAtLength,
  pathBounds,
  pathLength,
  point,
  pointAtLength,
  polyline,
  reversePath,
  ringIsClosed,
  rotate,
  scale,
  signedArea,
  splitPath,
  start,
  startTangent,
  tangent,
  toSvg,
  transformPath,
  translatePath,
} from '../../app/drafting/geometry';
import { toLine } from '../geometry/near';
import { randomOutline } from '../geometry/outlines';
import { seeded } from '../toys/seeded';

/** Lengths agree within this however they are reached, mm. */
const LENGTH_MM = 2e-6;

const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
const points = fc.record({ x: coordinate, y: coordinate });
const cubics = fc.tuple(points, points, points, points).map(([a, b, c, d]): Cubic => cubic(a, b, c, d));
const curves: fc.Arbitrary<Curve> = fc.oneof(
  cubics,
  fc.tuple(points, points).map(([a, b]) => line(a, b)),
);
const rings = fc.integer({ min: 1, max: 2 ** 31 }).map((s): Path => randomOutline(seeded(s)).flat());
const shares = fc.double({ min: 0, max: 1, noNaN: true });
const angles = fc.double({ min: -6, max: 6, noNaN: true });

describe('paths', () => {
  it('keep their length when turned, mirrored, moved and reversed, and grow with their size', () => {
    fc.assert(
      fc.property(rings, angles, fc.double({ min: 0.1, max: 10, noNaN: true }), (ring, angle, factor) => {
        const whole = pathLength(ring);
        expect(pathLength(transformPath(ring, (p) => rotate(p, angle)))).toBeCloseTo(whole, 5);
        expect(pathLength(mirrorPath(ring))).toBeCloseTo(whole, 5);
        expect(pathLength(translatePath(ring, 3, -7))).toBeCloseTo(whole, 5);
        expect(pathLength(reversePath(ring))).toBeCloseTo(whole, 5);
        expect(pathLength(transformPath(ring, (p) => scale(p, factor))) / factor).toBeCloseTo(whole, 4);
      }),
    );
  });

  it('change their area’s sign when mirrored or reversed, not when turned', () => {
    fc.assert(
      fc.property(rings, angles, (ring, angle) => {
        const area = signedArea(ring);
        expect(signedArea(mirrorPath(ring))).toBeCloseTo(-area, 6);
        expect(signedArea(reversePath(ring))).toBeCloseTo(-area, 6);
        expect(signedArea(transformPath(ring, (p) => rotate(p, angle)))).toBeCloseTo(area, 6);
        expect(Math.abs(signedArea(polyline(flatten(ring, 0.001))) - area)).toBeLessThan(0.001 * pathLength(ring));
      }),
    );
  });

  it('split into parts that add up, meet, and lie where they lay', () => {
    fc.assert(
      fc.property(rings, shares, (ring, share) => {
        const whole = pathLength(ring);
        const [before, after] = splitPath(ring, share * whole);
        expect(Math.abs(pathLength(before) - share * whole)).toBeLessThan(LENGTH_MM);
        expect(Math.abs(pathLength(before) + pathLength(after) - whole)).toBeLessThan(LENGTH_MM);
        if (before.length === 0 || after.length === 0) return;
        expect(distance(end(before), start(after))).toBe(0);
        expect(distance(end(before), pointAtLength(ring, share * whole).point)).toBeLessThan(LENGTH_MM);
      }),
    );
  });

  it('reversed, read the same places from the other end', () => {
    fc.assert(
      fc.property(rings, shares, (ring, share) => {
        const whole = pathLength(ring);
        const there = pointAtLength(ring, share * whole);
        const back = pointAtLength(reversePath(ring), whole - share * whole);
        expect(distance(there.point, back.point)).toBeLessThan(2 * LENGTH_MM);
        expect(distance(startTangent(ring), scale(endTangent(reversePath(ring)), -1))).toBeLessThan(1e-12);
      }),
    );
  });

  it('come back from SVG within half a step of 1e-4 mm, and then stay as they are', () => {
    fc.assert(
      fc.property(rings, (ring) => {
        const text = toSvg(ring, { closed: true });
        expect(text).toMatch(/^M[-\d. ]+([LC][-\d. ]+)+Z$/);
        const back = fromSvg(text);
        expect(toSvg(back, { closed: true })).toBe(text);
        expect(back).toHaveLength(ring.length);
        expect(ringIsClosed(back, 0)).toBe(true);
        for (const [i, curve] of ring.entries()) {
          const other = back[i] ?? line(point(0, 0), point(0, 0));
          expect(distance(at(curve, 0.3), at(other, 0.3))).toBeLessThan(1e-4);
        }
      }),
    );
  });

  it('flatten to chords within the tolerance asked for', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.001, max: 2, noNaN: true }), (curve, tolerance) => {
        const chords = flatten([curve], tolerance);
        const places = Array.from({ length: 101 }, (_, i) => at(curve, i / 100));
        for (const place of places) expect(toLine(place, chords)).toBeLessThanOrEqual(tolerance + 1e-9);
        expect([chords[0], chords[chords.length - 1]]).toEqual([curve.from, curve.to]);
      }),
    );
  });
});

describe('curves', () => {
  it('have the lengths of their parts, and find a place by its length', () => {
    fc.assert(
      fc.property(curves, shares, (curve, share) => {
        const whole = curveLength(curve);
        expect(whole).toBeGreaterThanOrEqual(distance(curve.from, curve.to) - LENGTH_MM);
        const t = paramAtLength(curve, share * whole);
        expect(Math.abs(lengthTo(curve, t) - share * whole)).toBeLessThan(LENGTH_MM);
      }),
      { numRuns: 400 },
    );
  });

  it('have boxes that hold them and touch them on every side', () => {
    fc.assert(
      fc.property(curves, (curve) => {
        const box = bounds(curve);
        const places = Array.from({ length: 2001 }, (_, i) => at(curve, i / 2000));
        const [xs, ys] = [places.map((p) => p.x), places.map((p) => p.y)];
        const drawn = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
        const sides = [box.left, box.top, box.right, box.bottom];
        for (const [i, side] of sides.entries()) expect(Math.abs(side - (drawn[i] ?? 0))).toBeLessThan(2e-3);
        expect(box.left).toBeLessThanOrEqual(Math.min(...xs) + 1e-9);
        expect(box.bottom).toBeGreaterThanOrEqual(Math.max(...ys) - 1e-9);
        expect(pathBounds([curve])).toEqual(box);
      }),
    );
  });

  it('have a direction even where a handle has no length', () => {
    const [a, b, c] = [point(0, 0), point(30, 10), point(60, 0)];
    for (const curve of [cubic(a, a, b, c), cubic(a, b, c, c), cubic(a, a, c, c), line(a, c)]) {
      for (const t of [0, 0.5, 1]) expect(Math.hypot(tangent(curve, t).x, tangent(curve, t).y)).toBeCloseTo(1, 12);
    }
    expect(tangent(cubic(a, a, a, c), 0)).toEqual(point(1, 0));
    expect(angleBetween(tangent(cubic(a, a, b, c), 0), b)).toBeCloseTo(0, 12);
  });
});

describe('directions', () => {
  it('turn as seen: right is clockwise with y down', () => {
    const east: Point = point(1, 0);
    expect(rotate(east, Math.PI / 2).y).toBeCloseTo(1, 12);
    expect(add(rotate(east, Math.PI), east).x).toBeCloseTo(0, 12);
  });
});
