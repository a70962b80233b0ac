import { describe, expect, test } from 'vitest';
import type { Unit } from '../../app/body';
import { type Draft, draft, fullOrder } from '../../app/drafting/draft';
import { garments } from '../../app/drafting/garments';
import { flatten, type Point } from '../../app/drafting/geometry';
import { type Join, type Mark, pencilPlan, stepOf } from '../../app/drafting/pencil';
import { bodyFrom, demoCards } from '../../app/measuring';
import { buildCard, builds } from '../toys/builds';

/** What the hand may stray beyond half a step of the ruler, mm: the bound the plan is made for. */
const HAND_MM = 0.5;
const SPANS = 12;

const cards = [...demoCards, ...builds.map((build) => buildCard(build))];
const drafts: readonly Draft[] = garments.flatMap((garment, turn) => {
  const suited = cards.filter((card) => garment.bodies.includes(card.toy.body));
  return [suited[turn % suited.length], suited[(turn + 4) % suited.length]].flatMap((card) => {
    const full = fullOrder({ garment: garment.id }, card?.taken ?? '');
    if (!card || !full.ok) return [];
    const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
    return outcome.ok ? [outcome.draft] : [];
  });
});

test('there is something to draw', () => expect(drafts.length).toBeGreaterThan(12));

describe.each([['cm'], ['in']] as const)('redrawn by the numbers alone, %s', (unit: Unit) => {
  const allowed = stepOf(unit) / 2 + HAND_MM;

  test('every piece lies on the draft, and every seam measures what the plan says', () => {
    for (const made of drafts)
      for (const plan of pencilPlan(made, unit)) {
        const piece = made.pieces[plan.piece];
        if (!piece) return expect.fail('no such piece');
        const named = `${made.order.garment} ${piece.name}`;
        const rings = [smooth, straight].map((by) => plan.lines.map(({ joins }) => drawn(joins, plan.marks, by)));
        const true_ = piece.edges.map(({ path }) => flatten(path, 0.01));
        const at = shiftOf(true_.flatMap(([real], i) => (real ? [[rings[0]?.[i]?.[0] ?? real, real] as const] : [])));
        for (const lines of rings)
          piece.edges.forEach((edge, index) => {
            const line = (lines[index] ?? []).map(at);
            const own = true_[index] ?? [];
            expect(farthest(line, own), `${named} ${edge.name}`).toBeLessThanOrEqual(allowed);
            expect(farthest(own, line), `${named} ${edge.name}`).toBeLessThanOrEqual(allowed);
          });
        piece.edges.forEach((edge, index) => {
          expect(plan.lines[index]).toMatchObject({ name: edge.name, length: edge.length, allowance: edge.allowance });
          const redrawn = lengthOf(rings[0]?.[index] ?? []);
          expect(Math.abs(redrawn - edge.length), `${named} ${edge.name} long`).toBeLessThanOrEqual(2 * allowed);
        });
      }
  });

  test('numbers are whole steps of the ruler, on the paper, each place once; curves have one to five between', () => {
    for (const made of drafts)
      for (const { marks, lines, width, height } of pencilPlan(made, unit)) {
        for (const { x, y } of marks) {
          for (const mm of [x, y]) expect(mm / stepOf(unit)).toBeCloseTo(Math.round(mm / stepOf(unit)), 9);
          expect(Math.min(x, y, width - x, height - y)).toBeGreaterThanOrEqual(0);
        }
        expect(new Set(marks.map(({ x, y }) => `${x} ${y}`)).size).toBe(marks.length);
        expect(marks.map(({ number }) => number)).toEqual(marks.map((_, index) => index + 1));
        for (const { kind, through } of lines.flatMap(({ joins }) => joins)) {
          if (kind === 'straight') expect(through).toHaveLength(2);
          else expect(through.length).toBeLessThanOrEqual(7);
        }
      }
  });
});

type By = (points: readonly Point[]) => readonly Point[];

function drawn(joins: readonly Join[], marks: readonly Mark[], by: By): readonly Point[] {
  return joins.flatMap(({ kind, through }) => {
    const points = through.map((number) => marks[number - 1] ?? expect.fail(`no point ${number}`));
    const up = points.map(({ x, y }) => ({ x, y: -y }));
    return kind === 'straight' ? spread(up) : by(up);
  });
}

/** Points along straight lines. */
const spread = (points: readonly Point[]): readonly Point[] =>
  points.flatMap((b, i) => {
    const a = points[i - 1];
    if (!a) return [b];
    return Array.from({ length: SPANS }, (_, n) => {
      const t = (n + 1) / SPANS;
      return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    });
  });

const straight: By = spread;

/** A natural cubic spline through the points, by their distances (Burden & Faires, Numerical Analysis, 3.5; from memory). */
const smooth: By = (points) => {
  const knots = points.map((_, i) => lengthOf(points.slice(0, i + 1)));
  const [xs, ys] = [
    spline(
      knots,
      points.map((p) => p.x),
    ),
    spline(
      knots,
      points.map((p) => p.y),
    ),
  ];
  const last = knots.at(-1) ?? 0;
  const count = SPANS * (points.length - 1);
  return Array.from({ length: count + 1 }, (_, n) => ({ x: xs((n / count) * last), y: ys((n / count) * last) }));
};

function spline(knots: readonly number[], values: readonly number[]): (t: number) => number {
  const last = knots.length - 1;
  const [h, a] = [(i: number) => (knots[i + 1] ?? 0) - (knots[i] ?? 0), (i: number) => values[i] ?? 0];
  const [mu, z, c] = [[0], [0], Array.from({ length: last + 1 }, () => 0)];
  for (let i = 1; i < last; i++) {
    const alpha = (3 / h(i)) * (a(i + 1) - a(i)) - (3 / h(i - 1)) * (a(i) - a(i - 1));
    const l = 2 * ((knots[i + 1] ?? 0) - (knots[i - 1] ?? 0)) - h(i - 1) * (mu[i - 1] ?? 0);
    mu[i] = h(i) / l;
    z[i] = (alpha - h(i - 1) * (z[i - 1] ?? 0)) / l;
  }
  for (let i = last - 1; i > 0; i--) c[i] = (z[i] ?? 0) - (mu[i] ?? 0) * (c[i + 1] ?? 0);
  return (t) => {
    const after = knots.findIndex((knot) => knot > t);
    const i = after < 0 ? last - 1 : after - 1;
    const [ci = 0, next = 0, s] = [c[i], c[i + 1], t - (knots[i] ?? 0)];
    const b = (a(i + 1) - a(i)) / h(i) - (h(i) * (next + 2 * ci)) / 3;
    return a(i) + s * (b + s * (ci + (s * (next - ci)) / (3 * h(i))));
  };
}

/** How the paper lies on the draft: moved by what all corners are off on the whole, as two hands would lay them. */
function shiftOf(corners: readonly (readonly [told: Point, real: Point])[]): (p: Point) => Point {
  const mean = (of: (pair: readonly [Point, Point]) => number) =>
    corners.reduce((sum, pair) => sum + of(pair), 0) / corners.length;
  const dx = mean(([told, real]) => real.x - told.x);
  const dy = mean(([told, real]) => real.y - told.y);
  return (p) => ({ x: p.x + dx, y: p.y + dy });
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => sum + Math.hypot(p.x - (points[i - 1] ?? p).x, p.y - (points[i - 1] ?? p).y), 0);

/** How far the points lie from a line of chords at most. */
function farthest(points: readonly Point[], chords: readonly Point[]): number {
  const away = (p: Point): number => Math.min(...chords.map((b, i) => toChord(p, chords[i - 1] ?? b, b)));
  return Math.max(...points.map(away));
}

function toChord(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square > 0 ? Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}
