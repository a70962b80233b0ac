import { describe, expect, it } from 'vitest';
import { BANK_CARD_MM } from '../../app/body';
import { distanceOn, seePlane } from '../../app/measuring/photo';
import { PICTURE, photograph, type Shot } from '../toys/photographs';
import { seeded } from '../toys/random';

const TILT = (35 * Math.PI) / 180;
const PHOTOS = 200;

/** Relative errors, whether the stated give covered them, and its full width as a share of the length; over many photographs. */
function judged(seed: number, shot: (random: () => number) => Omit<Shot, 'tilt' | 'tap'>, stated = 1.2) {
  const random = seeded(seed);
  const found = Array.from({ length: PHOTOS }, () => photograph(random, { tilt: TILT, tap: 1.2, ...shot(random) }))
    .filter((photo) => photo.truth > 30)
    .map(({ corners, first, second, truth }) => {
      const plane = seePlane(corners, PICTURE, stated);
      const known = plane.ok ? distanceOn(plane, first, second) : null;
      if (!known) throw new Error('not seen');
      const error = Math.abs(known.value - truth);
      return { error: error / truth, covered: error <= known.give, width: (2 * known.give) / known.value };
    });
  return {
    error: median(found.map(({ error }) => error)),
    width: median(found.map(({ width }) => width)),
    covered: found.filter(({ covered }) => covered).length / found.length,
  };
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

describe('distances from photographs tilted up to 35°, corners and points tapped by an unsteady finger', () => {
  const usual = (random: () => number) => ({
    reach: 150 + 150 * random(),
    focal: 0.6 * Math.exp(0.3 * (random() - 0.5)),
  });

  it('are right within 1 % at the median, and within what is stated nine times in ten', () => {
    const { error, covered, width } = judged(31, usual);
    expect(error).toBeLessThan(0.01);
    expect(covered).toBeGreaterThan(0.9);
    expect(width).toBeLessThan(0.03);
  });

  it('hold for a camera zoomed in twice', () => {
    const { error, covered } = judged(32, () => ({ reach: 250, focal: 1.2 }));
    expect(error).toBeLessThan(0.01);
    expect(covered).toBeGreaterThan(0.88);
  });

  it('would not be covered by a finger said to be four times steadier: the measure of it rejects', () => {
    expect(judged(33, usual, 0.3).covered).toBeLessThan(0.6);
  });
});

describe('a card seen small, which says little of how it leans', () => {
  it('is taken to lean no more than hands let it, and either way: nine in ten are within an eighth', () => {
    const random = seeded(34);
    const errors = Array.from({ length: 150 }, () =>
      photograph(random, { tilt: 0.2, tap: 1.2, reach: 1200, focal: 0.6 }),
    )
      .filter((photo) => photo.truth > 60)
      .map(({ corners, first, second, truth }) => {
        const plane = seePlane(corners, PICTURE);
        const known = plane.ok ? distanceOn(plane, first, second) : null;
        return known ? Math.abs(known.value - truth) / truth : 1;
      })
      .sort((a, b) => a - b);
    expect(errors[Math.floor(0.9 * errors.length)]).toBeLessThan(0.11);
    expect(median(errors)).toBeLessThan(0.023);
  });
});

describe('a card seen square on', () => {
  it('is a bank card: 85.60 × 53.98 mm (ISO/IEC 7810, ID-1)', () =>
    expect(BANK_CARD_MM).toMatchObject({ width: 85.6, height: 53.98 }));

  const at = (x: number, y: number) => ({ x: 1500 + 8 * x, y: 1200 + 8 * y });
  const { width, height } = BANK_CARD_MM;
  const ring = [at(0, 0), at(width, 0), at(width, height), at(0, height)] as const;
  const length = (corners: typeof ring) => {
    const plane = seePlane(corners, PICTURE);
    return plane.ok ? distanceOn(plane, at(0, 0), at(100, 0))?.value : null;
  };

  it('gives the scale, and says where the number comes from', () => {
    const plane = seePlane(ring, PICTURE);
    const known = plane.ok ? distanceOn(plane, at(-20, 10), at(80, 10)) : null;
    expect(known?.from).toBe('photo');
    expect(known?.value).toBeCloseTo(100, 1);
  });

  it('may be tapped from any corner, either way round', () => {
    const [a, b, c, d] = ring;
    for (const corners of [
      [b, c, d, a],
      [d, c, b, a],
      [c, d, a, b],
      [a, d, c, b],
    ] as const)
      expect(length(corners)).toBeCloseTo(100, 1);
  });

  it('is refused when its corners cross, lie on a line, or are too close', () => {
    const [a, b, c, d] = ring;
    expect(seePlane([a, c, b, d], PICTURE)).toEqual({ ok: false, code: 'photo.not-a-card' });
    expect(seePlane([a, at(20, 0), at(40, 0), b], PICTURE)).toEqual({ ok: false, code: 'photo.not-a-card' });
    expect(seePlane([a, a, a, a], PICTURE)).toEqual({ ok: false, code: 'photo.not-a-card' });
    const near = (spot: typeof a) => ({ x: spot.x / 20, y: spot.y / 20 });
    expect(seePlane([near(a), near(b), near(c), near(d)], PICTURE)).toEqual({
      ok: false,
      code: 'photo.card-too-small',
    });
  });
});
