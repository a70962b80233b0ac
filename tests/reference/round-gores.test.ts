import { describe, expect, test } from 'vitest';
import { roundAlong, roundSeam } from '../../app/drafting/curves/round';
import type { Edge } from '../../app/drafting/draft-types';
import {
  angleBetween,
  end,
  endTangent,
  type Path,
  pathLength,
  point,
  start,
  startTangent,
} from '../../app/drafting/geometry';
import { lengthNamed, made, reading } from '../measured/made';
import { beasts } from '../toys/beasts';
import { randomCard, seeded } from '../toys/random';
import { ellipseArc } from '../toys/solids';

const COUNT = 6;
const NO_EASE = { full: 0, end: 0 };
const CARDS = [
  ...beasts.filter(({ toy }) => toy.body === 'round'),
  ...Array.from({ length: 9 }, (_, n) => randomCard(seeded(70 + n), 'round', { full: true })),
];

/** Between a seam and the gore's middle, from its start to its end, mm² (Green: exact for its cubics, from three samples a curve). */
function areaBeside(seam: Path): number {
  return seam.reduce((sum, curve) => {
    if (curve.kind !== 'cubic') return sum;
    const { from, out, into, to } = curve;
    const [a, b, c] = [3 * (out.y - from.y), 3 * (into.y - out.y), 3 * (to.y - into.y)];
    // ∫ x dy of two cubics in Bernstein form: products of their coefficients by C(3,i)·C(2,j)/(C(5,i+j)·6).
    const x = [from.x, out.x, into.x, to.x].map((each, i) => each * ([1, 3, 3, 1][i] ?? 0));
    const y = [a, 2 * b, c];
    const weights = [1, 5, 10, 10, 5, 1];
    return (
      sum +
      x.reduce((all, xi, i) => all + y.reduce((row, yj, j) => row + (xi * yj) / (6 * (weights[i + j] ?? 1)), 0), 0)
    );
  }, 0);
}

describe('gores of a ball, without ease', () => {
  const girth = 254;
  const radius = girth / (2 * Math.PI);
  const ball = { full: girth, high: radius };

  test('widths are 10 at the widest, 7.07 at 45° and 3.83 at 67.5° for a girth of 10 in (silverseams.com, 2020-10)', () => {
    for (const [turn, printed] of [
      [0.001, 10],
      [45, 7.07],
      [67.5, 3.83],
    ] as const) {
      const seam = roundSeam(ball, (turn * Math.PI) / 180, NO_EASE, COUNT, -1);
      expect((2 * COUNT * end(seam).x) / 25.4).toBeCloseTo(printed, 2);
    }
  });

  test('a gore is as long as its arc, and all together have the area of the zone: 2πrh (Archimedes)', () => {
    for (const turn of [0.3, 0.8, 1.2]) {
      expect(roundAlong(ball, turn)).toBeCloseTo(radius * turn, 6);
      const area = 2 * COUNT * areaBeside(roundSeam(ball, turn, NO_EASE, COUNT, 1));
      expect(area / (2 * Math.PI * radius ** 2 * Math.sin(turn))).toBeCloseTo(1, 6);
    }
  });

  test('its edge is an arc of a sine: r∫√(1 + (π/n)²·sin²t) dt, the elliptic integral of the second kind', () => {
    const m = (Math.PI / COUNT) ** 2;
    for (const turn of [0.3, 0.8, 1.2]) {
      // E(−m) by its power series in m: far within a thousandth for so small an m.
      const sines = [0, 2, 4, 6, 8].map((power) => integralOfSine(turn, power));
      const [s0 = 0, s2 = 0, s4 = 0, s6 = 0, s8 = 0] = sines;
      const edge = radius * (s0 + (m * s2) / 2 - (m ** 2 * s4) / 8 + (m ** 3 * s6) / 16 - (5 * m ** 4 * s8) / 128);
      expect(pathLength(roundSeam(ball, turn, NO_EASE, COUNT, 1))).toBeCloseTo(edge, 2);
    }
  });
});

/** ∫ sinᵏ from 0, by its reduction: k even. */
function integralOfSine(to: number, power: number): number {
  if (power === 0) return to;
  return (-(Math.sin(to) ** (power - 1)) * Math.cos(to) + (power - 1) * integralOfSine(to, power - 2)) / power;
}

test('half an ellipsoid is as long as its quarter: 4 quarters of 100 by 50 mm are 484.422 (complete elliptic integral)', () => {
  expect(4 * roundAlong({ full: 200 * Math.PI, high: 50 }, Math.PI / 2)).toBeCloseTo(484.422, 3);
});

test('tunics: all seams as long as the middle; girths as eased; neck and hem end square to every seam', () => {
  for (const card of CARDS) {
    const draft = made(card, 'tunic', { choices: { wings: 'none' } });
    const pieces = ['tunic-front', 'tunic-before', 'tunic-behind', 'tunic-back'] as const;
    const edge = (piece: string, name: string): Edge => {
      const found = draft?.pieces.find((each) => each.name === piece)?.edges.find((each) => each.name === name);
      if (!found) throw new RangeError(`${piece}.${name}`);
      return found;
    };
    if (!draft) throw new RangeError(card.toy.name);
    const middle = lengthNamed(draft, 'tunic-front', 'centre');
    for (const piece of pieces) expect(lengthNamed(draft, piece, 'side')).toBeCloseTo(middle, 2);
    expect(lengthNamed(draft, 'tunic-before', 'seam')).toBeCloseTo(middle, 2);
    // Quilting cotton, easy: 6 % and 0.3 mm of thickness, twice at each of six seams (drafting: ease); neck 3 % or 4 mm.
    const [t, seams] = [0.3, 2 * COUNT] as const;
    const eased = (girth: number) => girth * 1.06 + (Math.PI + seams) * t;
    const neck = reading(card, 'neck-girth');
    const all = (name: string) => 2 * pieces.reduce((sum, piece) => sum + lengthNamed(draft, piece, name), 0);
    const half = lengthNamed(draft, 'tunic-front', 'neck');
    expect(all('neck')).toBeCloseTo(12 * half, 2);
    expect(Math.abs(all('neck') - (neck + Math.max(0.03 * neck, 4) + Math.PI * t))).toBeLessThan(0.05);
    expect(Math.abs(all('hem') - eased(reading(card, 'hem-girth')))).toBeLessThan(0.05);
    const fullest = Math.max(...edge('tunic-front', 'side').path.map(({ to }) => to.x));
    expect(Math.abs(12 * fullest - eased(reading(card, 'body-girth')))).toBeLessThan(0.6);
    const [side, neckEdge, hem] = ['side', 'neck', 'hem'].map((name) => edge('tunic-front', name).path) as [
      Path,
      Path,
      Path,
    ];
    expect(angleBetween(endTangent(neckEdge), startTangent(side))).toBeCloseTo(Math.PI / 2, 3);
    expect(angleBetween(endTangent(side), startTangent(hem))).toBeCloseTo(Math.PI / 2, 3);
    expect(start(neckEdge)).toEqual(point(0, 0));
  }
});

/** Egg and ball as the solids that they are measured on: girth, and how high they reach above and below the fullest line. */
const SOLIDS = (
  [
    ['egg', 80, 220, 0.4],
    ['ball', 100, 200, 0.48],
  ] as const
).map(([name, half, height, full]) => {
  const card = beasts.find(({ toy }) => toy.name === name);
  if (!card) throw new RangeError(name);
  const girth = 2 * Math.PI * half;
  const [upper, lower] = [height * (1 - full), height * full * 1.15];
  const turn = (round: number) => Math.acos(round / girth);
  return {
    card,
    above: (round: number) => ellipseArc(half, upper, 0, turn(round)),
    below: (round: number) => ellipseArc(half, lower, 0, turn(round)),
    drop: (round: number) => lower * Math.sin(turn(round)),
  };
});

/** Readings are written in whole millimetres, which moves a level by as much again where a body is steep. */
const MOST_OFF_MM = 1.5;

test('on an egg and a ball the hem hangs where it was measured: gores are as long as the way over the solid, from where the finished neck finds it as wide', () => {
  for (const { card, above, below } of SOLIDS) {
    const draft = made(card, 'tunic');
    const neck = draft?.fit.find(({ place }) => place === 'neck')?.garment ?? Number.NaN;
    const way = above(neck - Math.PI * 0.3) + below(reading(card, 'hem-girth'));
    expect(Math.abs((draft ? lengthNamed(draft, 'tunic-front', 'centre') : 0) - way)).toBeLessThan(MOST_OFF_MM);
  }
});

test('drawn in, it lies over the solid from the thread to the fullest line, falls straight from there, and passes it; its elastic is as long as the neck and what laps', () => {
  for (const { card, above, drop } of SOLIDS) {
    const draft = made(card, 'tunic', { choices: { tunicNeck: 'drawn' } });
    if (!draft) throw new RangeError(card.toy.name);
    const [neck, hem] = [reading(card, 'neck-girth'), reading(card, 'hem-girth')];
    const way = above(neck) + drop(hem);
    expect(Math.abs(lengthNamed(draft, 'drawn-front', 'centre') - way)).toBeLessThan(MOST_OFF_MM);
    expect(4 * lengthNamed(draft, 'drawn-front', 'hem')).toBeCloseTo(
      reading(card, 'body-girth') * 1.06 + (Math.PI + 4) * 0.3,
      2,
    );
    expect(draft.notions.find(({ kind }) => kind === 'elastic')?.length).toBeCloseTo(neck + 20, 6);
    expect(draft.openings.map(({ gives, needs }) => gives >= needs)).toEqual([true]);
  }
});
