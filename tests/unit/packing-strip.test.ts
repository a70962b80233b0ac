import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, rotate } from '../../app/drafting/geometry';
import {
  type Packed,
  type Place,
  packFields,
  packStrip,
  type Shape,
  type Strip,
  shapeOf,
  stockOf,
} from '../../app/drafting/packing';
import { CLEAR, lookUp, NEARLY, VIEW } from '../../app/drafting/packing/chart';
import { convexParts } from '../../app/drafting/packing/convex';
import { depthIn } from '../../app/drafting/packing/near';
import { boundsOf, cross, ringArea } from '../../app/drafting/packing/polygon';
import { simplified } from '../../app/drafting/packing/simplify';
import { signedDepthIn, sumsOf } from '../../app/drafting/packing/sums';
import { boxOf, outside, overlaps, toOutline } from './packing-apart';

type Outline = readonly Point[];

const p = (x: number, y: number): Point => ({ x, y });

/** A rectangle of 120 × 60 cut into eight, one of them hollow: packed at best without any gap. */
const jigsaw: readonly Outline[] = [
  [p(0, 0), p(50, 0), p(30, 35), p(0, 20)],
  [p(50, 0), p(90, 0), p(80, 25), p(45, 30), p(38.75, 19.6875)],
  [p(90, 0), p(120, 0), p(120, 30), p(80, 25)],
  [p(0, 20), p(30, 35), p(20, 60), p(0, 60)],
  [p(38.75, 19.6875), p(45, 30), p(60, 60), p(20, 60), p(30, 35)],
  [p(45, 30), p(80, 25), p(70, 45), p(60, 60)],
  [p(80, 25), p(120, 30), p(100, 60), p(60, 60), p(70, 45)],
  [p(120, 30), p(120, 60), p(100, 60)],
];
const [WIDTH, LENGTH] = [60, 120];
const APART = 1e-6;

const half = (ring: Outline): Outline => ring.map(({ x, y }) => p(-x, -y));

/** Every outline in both turns along the grain. */
function jobOf(rings: readonly Outline[], { apart = APART, slack = 0, hold = {} as Partial<Packed> } = {}) {
  const turned = rings.flatMap((ring) => [ring, half(ring)]);
  const shapes = turned.map((ring) => shapeOf([ring], slack));
  const pieces = rings.map((_, index): Packed => ({ turns: [2 * index, 2 * index + 1], ...hold }));
  const outlineOf = ({ shape, x, y }: Place): Outline => {
    const { left, top } = shapes[shape] as Shape;
    return (turned[shape] as Outline).map((q) => p(q.x - left + x, q.y - top + y));
  };
  return { job: { stock: stockOf(shapes, apart), pieces }, outlineOf };
}

function within(search: Generator<{ readonly steps: number; readonly best: Strip }>, steps: number): readonly Strip[] {
  const found: Strip[] = [];
  for (const now of search) {
    if (found[found.length - 1] !== now.best) found.push(now.best);
    if (now.steps >= steps) break;
  }
  return found;
}

const last = (found: readonly Strip[]): Strip => found[found.length - 1] ?? expect.fail('nothing was laid');

/** A star with corners at random distances: simple, and hollow as often as not. */
const star = fc
  .array(fc.double({ min: 4, max: 20, noNaN: true }), { minLength: 3, maxLength: 24 })
  .map((radii) => radii.map((r, i) => p(...at((2 * Math.PI * i) / radii.length, r))));
const at = (angle: number, r: number): [number, number] => [r * Math.cos(angle), r * Math.sin(angle)];

describe('a strip', () => {
  test('holds all pieces of a jigsaw, none overlapping, none outside, nearly as short as it was before it was cut', () => {
    const { job, outlineOf } = jobOf(jigsaw);
    const found = within(packStrip(job, WIDTH, 1), 400_000);
    for (const { places, length } of found) {
      const outlines = places.map(outlineOf);
      expect(outlines).toHaveLength(jigsaw.length);
      expect(overlaps(outlines)).toEqual([]);
      for (const { left, right, top, bottom } of outlines.map(boxOf)) {
        expect(Math.min(left, top)).toBeGreaterThanOrEqual(-1e-9);
        expect(right).toBeLessThanOrEqual(length + 1e-9);
        expect(bottom).toBeLessThanOrEqual(WIDTH + 1e-9);
      }
      expect(places.every(({ shape }, index) => job.pieces[index]?.turns.includes(shape))).toBe(true);
    }
    expect(last(found).length).toBeLessThan(LENGTH / 0.84);
  });

  test('only gets shorter, alike for the same seed, and differently for another', () => {
    const { job } = jobOf(jigsaw);
    const found = within(packStrip(job, WIDTH, 3), 200_000);
    const lengths = found.map(({ length }) => length);
    expect(lengths.length).toBeGreaterThan(2);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(within(packStrip(jobOf(jigsaw).job, WIDTH, 3), 200_000)).toEqual(found);
    expect(last(within(packStrip(job, WIDTH, 4), 200_000)).places).not.toEqual(last(found).places);
  });

  test('keeps the gap it is asked for', () => {
    const { job, outlineOf } = jobOf(jigsaw, { apart: 3 });
    const outlines = last(within(packStrip(job, WIDTH, 1), 30_000)).places.map(outlineOf);
    expect(overlaps(outlines)).toEqual([]);
    const nearest = outlines.flatMap((one, i) => outlines.slice(i + 1).map((other) => distanceOf(one, other)));
    expect(Math.min(...nearest)).toBeGreaterThanOrEqual(3 - 1e-6);
    expect(Math.min(...nearest)).toBeLessThan(3.01);
  });

  test('holds pieces on the fold along its edge', () => {
    const { job, outlineOf } = jobOf(jigsaw.slice(0, 4), { hold: { hold: 'top' } });
    const outlines = last(within(packStrip(job, WIDTH, 1), 20_000)).places.map(outlineOf);
    expect(outlines.map((ring) => boxOf(ring).top)).toEqual([0, 0, 0, 0]);
    expect(overlaps(outlines)).toEqual([]);
  });

  test('finds nothing where a piece is wider', () => {
    expect([...packStrip(jobOf(jigsaw).job, 30, 1)]).toEqual([]);
  });

  test('lays stars without overlap, simplified or not', () => {
    fc.assert(
      fc.property(fc.array(star, { minLength: 2, maxLength: 9 }), fc.constantFrom(0, 0.4), (rings, slack) => {
        const { job, outlineOf } = jobOf(rings, { slack });
        const outlines = last(within(packStrip(job, WIDTH, 1), 4000)).places.map(outlineOf);
        expect(overlaps(outlines)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

test('a piece that belongs in one field is laid there, whichever has room', () => {
  const square = shapeOf([[p(0, 0), p(10, 0), p(10, 10), p(0, 10)]], 0);
  const fields = [0, 50].map((left) => ({ left, top: 0, right: left + 25, bottom: 12 }));
  const only = fields.map((field) => ({ turns: [0], only: field }));
  const job = { stock: stockOf([square], APART), pieces: [...only.slice(1), ...only.slice(1), { turns: [0] }] };
  const [found] = [...packFields(job, fields, 1)].flatMap(({ best }) => (best.places ? [best.places] : []));
  expect(found?.map(({ x }) => x >= 50)).toEqual([true, true, false]);
});

test('what is known of two outlines is known of them turned, and a chart is clear only where nothing overlaps', () => {
  const share = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(star, star, share, share, (one, other, x, y) => {
      const turns = [0, 1, 2, 3].flatMap((quarter) =>
        [one, other].map((ring) => ring.map((q) => rotate(q, (quarter * Math.PI) / 2))),
      );
      const shapes = turns.map((ring) => shapeOf([ring], 0));
      const stock = stockOf(shapes, 1);
      const [charts, lists] = [stock.charts(), stock.lists()];
      shapes.forEach((resting, i) => {
        shapes.forEach((moving, j) => {
          const [dx, dy] = [(x * (resting.width + moving.width)) / 2, (y * (resting.height + moving.height)) / 2];
          // Cut into convex parts otherwise, they overlap at the same shifts, but not as deep.
          const own = Math.max(0, signedDepthIn(sumsOf(resting, moving, 1), dx, dy));
          const shared = Math.max(0, signedDepthIn(stock.sums(i, j), dx, dy));
          const view = (i * shapes.length + j) * VIEW;
          // By another of its edges it may be a last digit deeper.
          expect(depthIn({ charts, lists }, view, stock.sums(i, j), dx, dy)).toBeCloseTo(shared, 9);
          if (Math.max(own, shared) > 1e-6) expect(Math.min(own, shared)).toBeGreaterThan(0);
          const said = lookUp(charts, view, dx, dy);
          if (said === CLEAR) expect(own).toBe(0);
          expect(Math.abs(Math.max(0, said - NEARLY) * charts.level - shared)).toBeLessThan(charts.off);
        });
      });
    }),
    { numRuns: 100 },
  );
});

describe('outlines', () => {
  test('are cut into convex parts that cover them once', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const parts = convexParts(ring);
        const area = parts.reduce((sum, part) => sum + ringArea(part), 0);
        expect(area).toBeCloseTo(Math.abs(ringArea(ring)), 6);
        for (const part of parts) {
          part.forEach((b, i) => {
            const [a, c] = [part.at(i - 1) ?? b, part[(i + 1) % part.length] ?? b];
            expect(cross(a, b, c)).toBeGreaterThanOrEqual(-1e-9);
          });
        }
      }),
    );
  });

  test('are simplified outwards only, within the slack, in the same box', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const simple = simplified(ring, 0.5, boundsOf([ring]));
        expect(simple.length).toBeLessThanOrEqual(ring.length);
        expect(outside(ring, simple)).toBeLessThan(1e-9);
        expect(boxOf(simple).left).toBeCloseTo(boxOf(ring).left, 9);
        expect(boxOf(simple).bottom).toBeCloseTo(boxOf(ring).bottom, 9);
      }),
    );
  });

  test('with needless corners lose them', () => {
    const ring = Array.from({ length: 200 }, (_, i) => p(...at((2 * Math.PI * i) / 200, 50)));
    expect(simplified(ring, 0.5, boundsOf([ring])).length).toBeLessThan(40);
  });
});

test('the overlap test finds a hundredth of a millimetre, by either library, and lets pieces touch', () => {
  const square = [p(0, 0), p(10, 0), p(10, 10), p(0, 10)];
  const moved = (by: number): Outline => square.map((q) => p(q.x + by, q.y));
  expect(overlaps([square, moved(9.99)])).toEqual([[0, 1]]);
  expect(overlaps([square, moved(10)])).toEqual([]);
});

/** The least distance between the edges of two outlines, by their corners. */
const distanceOf = (one: Outline, other: Outline): number =>
  Math.min(...one.map((q) => toOutline(q, other)), ...other.map((q) => toOutline(q, one)));
