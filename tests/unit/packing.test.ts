import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../app/drafting/geometry';
import {
  blockBox,
  blockLine,
  blockOutside,
  blockRows,
  chance,
  emptyBoard,
  highestPlace,
  nearestRoom,
  rowsOf,
  stampOf,
} from '../../app/drafting/packing';

const box = (width: number, height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const triangle: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 40, y: 40 },
  { x: 0, y: 40 },
];
const size = fc.double({ min: 0.5, max: 60, noNaN: true });

describe('rows', () => {
  test('cover the outline, and no more than a row above or below it', () => {
    const { rows, width, height } = rowsOf([triangle]);
    expect([width, height, rows.length]).toEqual([40, 40, 40]);
    for (const [y, spans] of rows.entries()) expect(spans).toEqual([[0, y + 1]]);
  });

  /** mm: what doubles lose on the way, with room. */
  const ROUNDING = 1e-6;

  test('every point inside lies in its row', () => {
    // Hundredths of a millimetre: an edge that is level but for a hair has no x to be exact in.
    const hundredths = fc.integer({ min: 0, max: 20_000 }).map((n) => n / 100);
    const corner = fc.tuple(hundredths, hundredths);
    fc.assert(
      fc.property(
        corner,
        corner,
        corner,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, c, s, t) => {
          const points = [a, b, c].map(([x, y]) => ({ x, y }));
          const [u, v] = s + t > 1 ? [1 - s, 1 - t] : [s, t];
          const x = a[0] + u * (b[0] - a[0]) + v * (c[0] - a[0]);
          const y = a[1] + u * (b[1] - a[1]) + v * (c[1] - a[1]);
          const { rows, left, top } = rowsOf([points]);
          // A point that rounding puts on either side of a row's edge may be looked for on both.
          const near = [y - top - ROUNDING, y - top + ROUNDING].map((at) =>
            Math.max(0, Math.min(rows.length - 1, Math.floor(at))),
          );
          const spans = near.flatMap((row) => rows[row] ?? []);
          expect(spans.some(([from, to]) => x - left >= from - ROUNDING && x - left <= to + ROUNDING)).toBe(true);
        },
      ),
    );
  });
});

describe('settling', () => {
  test('nests two triangles in little more than the square they make', () => {
    const upper = rowsOf([triangle]);
    const lower = rowsOf([triangle.map(({ x, y }) => ({ x: 40 - x, y: 40 - y }))]);
    const board = blockRows(emptyBoard(44, 40), upper, 0, 0);
    expect(highestPlace(board, stampOf(lower, 1))).toMatchObject({ y: 0 });
    expect(highestPlace(emptyBoard(44, 40), stampOf(upper, 1))).toEqual({ x: 0, y: 0 });
    expect(highestPlace(blockRows(emptyBoard(41, 40), upper, 0, 0), stampOf(lower, 1))).toBeUndefined();
  });

  test('always ends, keeps the gap, and finds room wherever a box fits an empty board', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 12 }), (sizes) => {
        let board = emptyBoard(120.3, 90.7);
        const laid: { x: number; y: number; width: number; height: number }[] = [];
        for (const [width, height] of sizes) {
          const rows = rowsOf([box(width, height)]);
          const place = highestPlace(board, stampOf(rows, 2));
          if (laid.length === 0) expect(place).toEqual({ x: 0, y: 0 });
          if (!place) continue;
          for (const other of laid) {
            const across = Math.max(place.x - other.x - other.width, other.x - place.x - width);
            const down = Math.max(place.y - other.y - other.height, other.y - place.y - height);
            expect(Math.max(across, down)).toBeGreaterThanOrEqual(2 - 1e-6);
          }
          laid.push({ ...place, width, height });
          board = blockRows(board, rows, place.x, place.y);
        }
      }),
    );
  });

  test('a piece exactly as large as the board fits', () => {
    expect(highestPlace(emptyBoard(194, 272), stampOf(rowsOf([box(194.0000000001, 272)]), 3))).toEqual({ x: 0, y: 0 });
    expect(highestPlace(emptyBoard(194, 272), stampOf(rowsOf([box(194.01, 272)]), 3))).toBeUndefined();
  });
});

describe('room for words', () => {
  test('a line just above the board, or below it, takes of it what lies within its gap', () => {
    for (const [y, free] of [
      [-1e-9, 7],
      [-3, 5],
      [100.5, 0],
    ] as const) {
      const across = [
        { x: 0, y },
        { x: 100, y },
      ];
      const board = blockLine(emptyBoard(100, 100), across, 6.5);
      expect(nearestRoom(board, 90, 5, { x: 50, y: 0 })?.y).toBe(free);
      expect(nearestRoom(board, 90, 99, { x: 50, y: 50 })).toBeUndefined();
    }
  });

  test('is the free place nearest the wish', () => {
    const board = blockBox(emptyBoard(100, 100), { x: 40, y: 0, width: 20, height: 100 });
    expect(nearestRoom(board, 10, 10, { x: 52, y: 50 })?.x).toBeCloseTo(60, 5);
    expect(nearestRoom(board, 10, 10, { x: 52, y: 50 })?.y).toBe(45);
    expect(nearestRoom(board, 41, 10, { x: 50, y: 50 })).toBeUndefined();
    expect(nearestRoom(board, 40, 100, { x: 90, y: 50 })?.x).toBeCloseTo(60, 5);
  });

  test('stays inside an outline, clear of its edge', () => {
    const board = blockOutside(emptyBoard(60, 60), triangle, 2);
    const place = nearestRoom(board, 8, 8, { x: 30, y: 10 });
    if (!place) return expect.fail('a triangle of 40 holds a square of 8');
    expect(place.x).toBeGreaterThanOrEqual(2);
    expect(place.y + 8).toBeLessThanOrEqual(38.01);
    // The slanting edge is x = y; the square's upper right corner is the nearest to it.
    expect((place.y - (place.x + 8)) / Math.SQRT2).toBeGreaterThanOrEqual(1.4);
    expect(nearestRoom(board, 30, 30, { x: 10, y: 30 })).toBeUndefined();
  });
});

test('chance is the same row for the same seed, in [0, 1)', () => {
  const row = (seed: number) => Array.from({ length: 500 }, chance(seed));
  expect(row(7)).toEqual(row(7));
  expect(row(7)).not.toEqual(row(8));
  expect(row(7).every((x) => x >= 0 && x < 1)).toBe(true);
});
