import { Bezier } from 'bezier-js';
import { describe, expect, it } from 'vitest';
import {
  arc,
  at,
  type Cubic,
  cubic,
  curveLength,
  distance,
  ellipseQuarter,
  lengthTo,
  line,
  paramAtLength,
  pathLength,
  point,
  polyline,
  signedArea,
  transformPath,
} from '../../app/drafting/geometry';
import { type Random, seeded } from '../toys/seeded';

/** What a length of a closed form may be off, mm. */
const LENGTH_MM = 1e-6;

/** Complete elliptic integral of the second kind E(m): Abramowitz & Stegun table 17.1; DLMF 19.2.8 with m = k². */
const ELLIPTIC_E: readonly (readonly [m: number, e: number])[] = [
  [0, 1.570796327],
  [0.1, 1.530757637],
  [0.25, 1.467462209],
  [0.5, 1.350643881],
  [0.75, 1.211056028],
  [0.9, 1.104774733],
];

describe('lengths of closed forms', () => {
  it.each(ELLIPTIC_E)('a quarter of an ellipse is a·E(m), m = %d', (m, e) => {
    const long = 100;
    const short = long * Math.sqrt(1 - m);
    // As eighteen arcs of 5°, drawn as cubics true to 1e-11, squeezed.
    const arcs = Array.from({ length: 18 }, (_, i) =>
      arc(point(0, 0), 1, (i * Math.PI) / 36, ((i + 1) * Math.PI) / 36),
    );
    const quarter = transformPath(arcs.flat(), (p) => point(p.x * long, p.y * short));
    expect(Math.abs(pathLength(quarter) - long * e)).toBeLessThan(LENGTH_MM);
  });

  it('a parabola y = x² from 0 to b: b√(1 + 4b²)/2 + asinh(2b)/4', () => {
    const b = 7;
    const third = b / 3;
    const parabola = cubic(point(0, 0), point(third, 0), point(2 * third, b * third), point(b, b * b));
    const exact = (b * Math.sqrt(1 + 4 * b * b)) / 2 + Math.asinh(2 * b) / 4;
    expect(Math.abs(curveLength(parabola) - exact)).toBeLessThan(LENGTH_MM);
  });

  it('Neile’s parabola (t², t³), with its cusp at an end and inside: ((4 + 9t²)^(3/2) − 8)/27', () => {
    const k = 50;
    const arm = (t: number) => (k * ((4 + 9 * t * t) ** 1.5 - 8)) / 27;
    const atEnd = cubic(point(0, 0), point(0, 0), point(k / 3, 0), point(k, k));
    expect(Math.abs(curveLength(atEnd) - arm(1))).toBeLessThan(LENGTH_MM);
    const inside = neile(k, -1, 0.7);
    expect(Math.abs(curveLength(inside) - arm(1) - arm(0.7))).toBeLessThan(LENGTH_MM);
    expect(Math.abs(lengthTo(inside, 1 / 1.7) - arm(1))).toBeLessThan(LENGTH_MM);
  });

  it('a line is as long as Pythagoras has it, and so is each part', () => {
    const slant = line(point(-3, 4), point(27, 44));
    expect(curveLength(slant)).toBeCloseTo(50, 9);
    expect(lengthTo(slant, 0.3)).toBeCloseTo(15, 9);
  });

  it('a straight line drawn as a cubic, doubling back or not', () => {
    expect(curveLength(cubic(point(0, 0), point(30, 0), point(60, 0), point(90, 0)))).toBeCloseTo(90, 9);
    // x = 3t − 9t² + 7t³ doubled: turning points where 3 − 18t + 21t² = 0.
    const back = cubic(point(0, 0), point(100, 0), point(-100, 0), point(100, 0));
    const turns = [-1, 1].map((sign) => at(back, (9 + sign * Math.sqrt(81 - 63)) / 21).x);
    const [first = 0, second = 0] = turns;
    expect(Math.abs(curveLength(back) - (first + (first - second) + (100 - second)))).toBeLessThan(LENGTH_MM);
  });
});

describe('against a general-purpose curve library', () => {
  it('agrees on the lengths of 300 random armhole-like cubics', () => {
    const random = seeded(11);
    for (let i = 0; i < 300; i += 1) {
      const curve = calm(random);
      const { from, out, into, to } = curve;
      const other = new Bezier(from.x, from.y, out.x, out.y, into.x, into.y, to.x, to.y);
      expect(Math.abs(curveLength(curve) - other.length())).toBeLessThan(1e-4);
      const half = other.split(0, 0.5) as Bezier;
      expect(Math.abs(lengthTo(curve, 0.5) - half.length())).toBeLessThan(1e-4);
      const t = paramAtLength(curve, other.length() / 3);
      expect(Math.abs((other.split(0, t) as Bezier).length() - other.length() / 3)).toBeLessThan(1e-4);
    }
  });
});

describe('a quarter circle as one cubic', () => {
  const quarter = ellipseQuarter(point(0, -100), point(1, 0), point(100, 0), point(0, 1));

  it('has handles of 0.5523 of the radius', () => {
    expect(quarter.out.x / 100).toBeCloseTo(0.5523, 4);
    expect((100 - (100 + quarter.into.y)) / 100).toBeCloseTo(0.5523, 4);
  });

  it('is true to 0.027 % of the radius', () => {
    const radii = Array.from({ length: 1001 }, (_, i) => distance(point(0, 0), at(quarter, i / 1000)) / 100 - 1);
    const worst = Math.max(...radii.map(Math.abs));
    expect(Math.round(worst * 1e5)).toBe(27);
  });

  it('as arcs of 30° is true to 4e-7 of the radius, in length, area and place', () => {
    const circle = arc(point(3, 4), 10, 0, 2 * Math.PI);
    expect(circle).toHaveLength(12);
    expect(Math.abs(pathLength(circle) / (20 * Math.PI) - 1)).toBeLessThan(4e-7);
    expect(Math.abs(signedArea(circle) / (100 * Math.PI) - 1)).toBeLessThan(8e-7);
    expect(signedArea(arc(point(3, 4), 10, 2 * Math.PI, 0))).toBeLessThan(0);
  });
});

describe('areas', () => {
  it('of a polygon and of a parabola’s segment (two thirds of its box: Archimedes)', () => {
    expect(signedArea(polyline([point(0, 0), point(4, 0), point(4, 3), point(0, 0)]))).toBeCloseTo(6, 12);
    const segment = cubic(point(0, 0), point(2, 8), point(4, 8), point(6, 0));
    expect(Math.abs(signedArea([segment]))).toBeCloseTo((2 / 3) * 6 * 6, 9);
  });
});

function neile(k: number, low: number, high: number): Cubic {
  // Control points by blossoming t² and t³ over [low, high].
  const square = (a: number, b: number, c: number) => (k * (a * b + b * c + a * c)) / 3;
  const cube = (a: number, b: number, c: number) => k * a * b * c;
  const control = (a: number, b: number, c: number) => point(square(a, b, c), cube(a, b, c));
  return cubic(control(low, low, low), control(low, low, high), control(low, high, high), control(high, high, high));
}

function calm(random: Random): Cubic {
  const somewhere = (x: number, y: number) => point(x + 20 * random(), y + 20 * random());
  return cubic(somewhere(0, 0), somewhere(30, -10), somewhere(60, 10), somewhere(100, 0));
}
