import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brent, hermite, type Path, pathLength, point, solveLength } from '../../app/drafting/geometry';
import { seeded } from '../toys/seeded';

describe('solving', () => {
  it('finds a curve of a given length within 0.001 mm in at most ten drawings, nearly always', () => {
    const random = seeded(41);
    const evaluations = Array.from({ length: 300 }, () => {
      const [wide, deep] = [30 + 60 * random(), 20 + 60 * random()];
      const draw = (share: number): Path => [
        hermite(point(0, 0), point(0, 1), point(wide, deep), point(1, 0), share, share),
      ];
      const aim = pathLength(draw(0.15 + 0.5 * random()));
      const found = solveLength(draw, aim, 0.1, 0.7);
      if (!found.ok) throw new Error(found.reason);
      expect(Math.abs(pathLength(draw(found.x)) - aim)).toBeLessThanOrEqual(0.001);
      return found.evaluations;
    });
    expect(evaluations.filter((n) => n > 10)).toHaveLength(0);
  });

  it('says so where no bracket, no number or only a jump exists', () => {
    const tolerance = 1e-9;
    expect(brent((x) => x * x + 1, -1, 2, { tolerance })).toEqual({
      ok: false,
      reason: 'no-bracket',
      atLow: 2,
      atHigh: 5,
    });
    expect(brent((x) => Math.sign(x - 0.3) || 1, 0, 1, { tolerance })).toMatchObject({
      ok: false,
      reason: 'no-bracket',
    });
    expect(brent((x) => (x > 0.2 && x < 0.9 ? Number.NaN : x - 0.5), 0, 1, { tolerance })).toMatchObject({
      ok: false,
      reason: 'not-finite',
    });
    expect(brent((x) => x, 0, 1, { tolerance })).toMatchObject({ ok: true, x: 0 });
  });

  it('finds every root of steep and flat cubics', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.integer({ min: -3, max: 4 }), (root, power) => {
        const f = (x: number) => 10 ** power * ((x - root) ** 3 + 0.001 * (x - root));
        const found = brent(f, -6, 7, { tolerance: 1e-7 });
        expect(found.ok && Math.abs(f(found.x)) <= 1e-7).toBe(true);
      }),
    );
  });
});
