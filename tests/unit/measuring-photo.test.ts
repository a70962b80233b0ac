import { describe, expect, it } from 'vitest';
import { BANK_CARD_MM } from '../../app/body';
import { distanceOn, isSimple, outlineOn, seePlane } from '../../app/measuring/photo';
import { PICTURE, photograph, photographOf, type Shot } from '../toys/photographs';
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

describe('the outline of a scrap in photographs tilted up to 20°', () => {
  const p = (x: number, y: number) => ({ x, y });
  /** An L with a slanted edge, as shares of half the reach, its thread along x. */
  const shape = [p(-0.9, -0.8), p(0.1, -0.9), p(0.2, -0.1), p(0.9, 0), p(0.8, 0.8), p(-0.8, 0.9)];

  /** Over many photographs: how often every corner lies within the give, and give and error at the median, mm. */
  function outlined(seed: number, reach: number, stated = 1.2) {
    const random = seeded(seed);
    const found = Array.from({ length: 80 }, () => {
      const scrap = shape.map(({ x, y }) => p((x * reach) / 2, (y * reach) / 2));
      const photo = photographOf(random, scrap, { tilt: 0.35, reach, tap: 1.2, focal: 0.6 });
      const plane = seePlane(photo.corners, PICTURE, stated);
      const outline = plane.ok ? outlineOn(plane, photo.outline, photo.thread) : null;
      if (!outline) return expect.fail('not seen');
      const { off, turn } = apart(outline.corners, scrap);
      return { off, turn, give: outline.give, covered: off <= outline.give };
    });
    return {
      give: median(found.map(({ give }) => give)),
      off: median(found.map(({ off }) => off)),
      turn: median(found.map(({ turn }) => Math.abs(turn))),
      covered: found.filter(({ covered }) => covered).length / found.length,
    };
  }

  it.each([
    [250, 3],
    [400, 10],
  ])('%i mm wide come back within what is stated nine times in ten, which is no more than %i mm', (reach, most) => {
    const { give, off, turn, covered } = outlined(41, reach);
    expect(covered).toBeGreaterThan(0.9);
    expect(give).toBeLessThan(most);
    expect(off).toBeGreaterThan(give / 6);
    expect(turn).toBeLessThan(0.01);
  });

  it('would not be covered by a finger said to be four times steadier', () =>
    expect(outlined(42, 250, 0.3).covered).toBeLessThan(0.6));

  it('may be tapped either way round, and lies with its thread from left to right', () => {
    const at = (x: number, y: number) => p(1500 + 8 * x, 1200 + 8 * y);
    const { width, height } = BANK_CARD_MM;
    const plane = seePlane([at(0, 0), at(width, 0), at(width, height), at(0, height)], PICTURE);
    if (!plane.ok) return expect.fail(plane.code);
    /** A triangle whose thread runs up the picture: its top is right, its left is up. */
    const corners = [at(0, 0), at(60, 120), at(0, 120)];
    for (const taps of [corners, [...corners].reverse()]) {
      const outline = outlineOn(plane, taps, [at(10, 100), at(10, 20)])?.corners ?? [];
      const lies = (taps === corners ? outline : [...outline].reverse()).map(({ x, y }) => [x, y]);
      const expected = [
        [120, 0],
        [0, 60],
        [0, 0],
      ];
      for (const [index, [x = 0, y = 0]] of expected.entries()) {
        expect(lies[index]?.[0]).toBeCloseTo(x, 0);
        expect(lies[index]?.[1]).toBeCloseTo(y, 0);
      }
    }
  });

  it.each([
    ['an L', shape, true],
    ['a bow', [p(0, 0), p(2, 2), p(2, 0), p(0, 2)], false],
    ['a corner on another edge', [p(0, 0), p(4, 0), p(4, 4), p(2, 0), p(0, 4)], false],
    ['a way out and back', [p(0, 0), p(4, 0), p(2, 0), p(0, 4)], false],
    ['a corner tapped twice', [p(0, 0), p(4, 0), p(4, 0), p(0, 4)], false],
    ['a line', [p(0, 0), p(2, 0), p(4, 0)], false],
  ])('%s: crosses or touches itself, or does not', (_, outline, simple) => expect(isSimple(outline)).toBe(simple));
});

type Spot = { readonly x: number; readonly y: number };

/** How far corners are off at most once one outline lies on the other as well as it can, mm, and by how much it was turned for it, radians. */
function apart(one: readonly Spot[], other: readonly Spot[]): { readonly off: number; readonly turn: number } {
  const middle = (all: readonly Spot[]) => ({
    x: all.reduce((sum, { x }) => sum + x, 0) / all.length,
    y: all.reduce((sum, { y }) => sum + y, 0) / all.length,
  });
  const about = (all: readonly Spot[]) => all.map(({ x, y }) => ({ x: x - middle(all).x, y: y - middle(all).y }));
  const [from, to] = [about(other), about(one)];
  const sum = (read: (a: Spot, b: Spot) => number) => from.reduce((all, a, at) => all + read(a, to[at] ?? a), 0);
  const turn = Math.atan2(
    sum((a, b) => a.x * b.y - a.y * b.x),
    sum((a, b) => a.x * b.x + a.y * b.y),
  );
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const offs = from.map(({ x, y }, at) =>
    Math.hypot(x * cos - y * sin - (to[at]?.x ?? 0), x * sin + y * cos - (to[at]?.y ?? 0)),
  );
  return { off: Math.max(...offs), turn };
}
