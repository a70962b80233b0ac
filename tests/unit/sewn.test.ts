import { describe, expect, test } from 'vitest';
import type { Draft, Edge, Piece, Ref, Role, Seam } from '../../app/drafting/draft-types';
import { line, type Path, pathLength, point, polyline } from '../../app/drafting/geometry';
import type { Figure } from '../sewn/figure';
import { panelsOf } from '../sewn/panels';
import { gapsOf } from '../sewn/report';
import { type Part, union } from '../sewn/solid';
import { spot } from '../sewn/space';
import { strained } from '../sewn/strain';
import { worn } from '../sewn/worn';
import { handMade } from '../toys/drafts';
import { bearDraft } from '../toys/round-numbers';

/** Bodies and garments whose strain is known by geometry alone: radii and lengths in mm. */
const ROUND = 2 * Math.PI;
const RADIUS = 60;
const LENGTH = 90;

describe('sewn on a body', () => {
  test('a tube a tenth short of its cylinder is drawn out by 1/0.9', () => {
    const { mean, gap } = sat(tube((0.9 * ROUND * RADIUS) / 4), figure(cylinder));
    expect(Math.abs(mean - 11.1)).toBeLessThan(0.4);
    expect(gap).toBeLessThan(0.5);
  });

  test('a tube a tenth too wide is not strained, and keeps outside', () => {
    const { p95, gap, nearest } = sat(tube((1.1 * ROUND * RADIUS) / 4), figure(cylinder), 0.35);
    expect(p95).toBeLessThan(0.5);
    expect(gap).toBeLessThan(0.5);
    expect(nearest).toBeGreaterThan(RADIUS - 0.1);
  });

  test('six gores sit on a ball as one skin', () => {
    const { p95, gap } = sat(gores(), figure(ball));
    expect(p95).toBeLessThan(2);
    expect(gap).toBeLessThan(0.5);
  });

  test('a square of tape holds what is under it; a whole length of it holds all that laps', () => {
    const held = (garment: string, name: string) => {
      const { panels, sewn: stitches } = panelsOf(bearDraft({ garment }), 8);
      const ends = stitches.filter(({ seam }) => seam === 'closure').map(({ one }) => one);
      const all = panels.flatMap(({ half, first, points }) =>
        half.piece.name === name ? points.flatMap((p, n) => (ends.includes(first + n) ? [p] : [])) : [],
      );
      const [a, b] = [all[0] ?? point(0, 0), all[all.length - 1] ?? point(0, 0)];
      return Math.hypot(b.x - a.x, b.y - a.y);
    };
    expect(held('cape', 'cape')).toBeGreaterThan(5);
    expect(held('cape', 'cape')).toBeLessThan(25);
    expect(held('jacket', 'front')).toBeGreaterThan(60);
  });

  test('the same twice is the same', () => {
    const [one, two] = [1, 2].map(() => sat(tube((0.9 * ROUND * RADIUS) / 4), figure(cylinder), 0.3).mean);
    expect(one).toBe(two);
  });
});

function sat(garment: Draft, body: Figure, fine = 0.5) {
  const result = worn(garment, body, 0, fine);
  const strains = strained(result).map(({ strain }) => 100 * strain);
  const sorted = [...strains].sort((a, b) => a - b);
  const { places, light } = result.cloth;
  const radii = [...light.keys()].map((n) => Math.hypot(places[3 * n] ?? 0, places[3 * n + 2] ?? 0));
  return {
    mean: strains.reduce((sum, each) => sum + each, 0) / strains.length,
    p95: sorted[Math.floor(0.95 * sorted.length)] ?? Number.NaN,
    gap: Math.max(...gapsOf(result).values()),
    nearest: Math.min(...radii),
  };
}

const everywhere = (distance: Part['distance']): Part => ({ distance, centre: spot(0, 0, 0), reach: 1e4 });
const cylinder = everywhere((x, _, z) => Math.hypot(x, z) - RADIUS);
const ball = everywhere((x, y, z) => Math.hypot(x, y - LENGTH / 2, z) - RADIUS);

const figure = (part: Part): Figure => ({
  solid: union([part]),
  section: () => ({ across: RADIUS, before: RADIUS, behind: RADIUS, back: 0 }),
  head: { centre: spot(0, -1e3, 0), half: spot(1, 1, 1) },
  arms: [],
  legs: [],
  lines: {
    neck: 0,
    shoulder: { x: 0, y: 0 },
    underarm: 0,
    waist: LENGTH / 2,
    hem: LENGTH,
    seat: LENGTH,
    crotch: LENGTH,
  },
  hem: {},
  falls: 'y',
  residuals: {},
});

const edge = (name: string, role: Role, path: Path): Edge => ({
  name,
  role,
  path,
  length: pathLength(path),
  allowance: 0,
});
const piece = (name: string, edges: readonly Edge[], more: Partial<Piece>): Piece => ({
  name,
  copies: 1,
  mirrored: false,
  onFold: false,
  edges,
  lines: [],
  seamLine: edges.flatMap(({ path }) => path),
  cutLine: [],
  grain: [point(0, 0), point(0, 1)],
  notches: [],
  cuts: [],
  ...more,
});
const seam = (name: string, first: Ref, second: Ref): Seam => ({
  name,
  join: 'sewn',
  sewn: 2,
  first: [first],
  second: [second],
  firstLength: LENGTH,
  secondLength: LENGTH,
  ratio: 1,
});

/** Front and back, each on the fold and `half` wide. */
function tube(half: number): Draft {
  const [a, b, c, d] = [point(0, 0), point(half, 0), point(half, LENGTH), point(0, LENGTH)];
  const edges = [
    edge('top', 'hem', [line(a, b)]),
    edge('side', 'seam', [line(b, c)]),
    edge('bottom', 'hem', [line(c, d)]),
    edge('centre', 'fold', [line(d, a)]),
  ];
  return handMade(1, {
    pieces: ['front', 'back'].map((name) => piece(name, edges, { onFold: true })),
    seams: [seam('side', { piece: 'back', edge: 'side' }, { piece: 'front', edge: 'side' })],
  });
}

/** A girth of gores is eased by three in a hundred, as a hat's. */
const EASED = 1.03;

/** Gores of a ball, from 45° above its fullest line to 43° below. */
function gores(): Draft {
  const row = (n: number) => (LENGTH * n) / 24;
  const width = (y: number) => ((EASED * Math.PI * RADIUS) / 6) * Math.cos((y - LENGTH / 2) / RADIUS);
  const right = polyline(Array.from({ length: 25 }, (_, n) => point(width(row(n)), row(n))));
  const left = polyline(Array.from({ length: 25 }, (_, n) => point(-width(row(24 - n)), row(24 - n))));
  const [top, foot] = [width(0), width(LENGTH)];
  const across = (name: string, y: number, from: number, to: number) =>
    edge(name, 'hem', [line(point(from, y), point(to, y))]);
  const folded = [
    across('neck', 0, 0, top),
    edge('side', 'seam', right),
    across('hem', LENGTH, foot, 0),
    edge('centre', 'fold', [line(point(0, LENGTH), point(0, 0))]),
  ];
  const whole = [
    across('neck', 0, -top, top),
    edge('seam', 'seam', right),
    across('hem', LENGTH, foot, -foot),
    edge('side', 'seam', left),
  ];
  const pair = { copies: 2, mirrored: true };
  return handMade(1, {
    pieces: [
      piece('tunic-front', folded, { onFold: true }),
      piece('tunic-before', whole, pair),
      piece('tunic-behind', whole, pair),
      piece('tunic-back', folded, { onFold: true }),
    ],
    seams: [
      seam('front', { piece: 'tunic-before', edge: 'side' }, { piece: 'tunic-front', edge: 'side', back: true }),
      seam('back', { piece: 'tunic-behind', edge: 'side' }, { piece: 'tunic-back', edge: 'side', back: true }),
      seam('side', { piece: 'tunic-before', edge: 'seam' }, { piece: 'tunic-behind', edge: 'seam' }),
    ],
  });
}
