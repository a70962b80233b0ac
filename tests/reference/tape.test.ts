import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import type { Point } from '../../app/drafting/geometry';
import { toTapePdf } from '../../app/drafting/output';
import { createSay } from '../../app/words';
import { readPdf } from './pdf-reading';

/** How far a tick read back may lie from where it belongs, mm. */
const TRUE_MM = 0.02;
/** International yard and pound agreement, 1959: 1 in = 25.4 mm. */
const INCH_MM = 25.4;

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

test.each([
  ['in', [279.4, 215.9]],
  ['cm', [297, 210]],
] as const)(
  'the tape, %s: every millimetre and every sixteenth lies where it belongs, strip by strip',
  async (units, size) => {
    const { pages } = await readPdf(toTapePdf({ say, units, date: '2026-11-20' }));
    expect(pages).toHaveLength(1);
    const [page] = pages;
    expect([page?.width, page?.height].map((mm) => Math.round((mm ?? 0) * 10) / 10)).toEqual(size);
    const strokes = page?.strokes ?? [];
    const strips = strokes.filter(({ points }) => points.length > 4 && width(points) > 200);
    expect(strips).toHaveLength(6);
    strips.forEach(({ points }, n) => {
      const [left, top, bottom] = [
        Math.min(...points.map((p) => p.x)),
        Math.min(...points.map((p) => p.y)),
        Math.max(...points.map((p) => p.y)),
      ];
      expect(width(points)).toBeCloseTo(250, 1);
      const [metric, inches] = [top, bottom].map((y) => ticksAt(strokes, y).map((x) => x - left + n * 250));
      expect(metric).toHaveLength(249);
      for (const at of metric ?? []) expect(Math.abs(at - Math.round(at))).toBeLessThan(TRUE_MM);
      for (const at of inches ?? [])
        expect(Math.abs(at - (Math.round((at / INCH_MM) * 16) * INCH_MM) / 16)).toBeLessThan(TRUE_MM);
      expect(inches?.length).toBeGreaterThanOrEqual(156);
    });
  },
);

test.each([
  ['in', 279.4],
  ['cm', 297],
] as const)(
  'in large print too each tick lies where it belongs, %s: a half centimetre, a quarter inch',
  async (units, wide) => {
    const { pages } = await readPdf(toTapePdf({ say, units, print: 'large', date: '2026-11-20' }));
    let n = 0;
    for (const { width: across, height, strokes } of pages) {
      expect(across).toBeCloseTo(wide, 1);
      const strips = strokes.filter(({ points }) => points.length > 4 && width(points) > 200);
      for (const { points } of strips) {
        const [left, top] = [Math.min(...points.map((p) => p.x)), Math.min(...points.map((p) => p.y))];
        const bottom = Math.max(...points.map((p) => p.y));
        expect(width(points)).toBeCloseTo(250, 1);
        expect(bottom).toBeLessThan(height - 10);
        const [metric, inches] = [top, bottom].map((y) => ticksAt(strokes, y).map((x) => x - left + n * 250));
        expect(metric).toHaveLength(49);
        for (const at of metric ?? []) expect(Math.abs(at - 5 * Math.round(at / 5))).toBeLessThan(TRUE_MM);
        for (const at of inches ?? [])
          expect(Math.abs(at - (Math.round((at / INCH_MM) * 4) * INCH_MM) / 4)).toBeLessThan(TRUE_MM);
        expect(inches?.length).toBeGreaterThanOrEqual(39);
        n += 1;
      }
    }
    expect(n).toBe(6);
  },
);

test('the gauge doubles a hundred millimetres in ten even steps', async () => {
  const { pages } = await readPdf(toTapePdf({ say, units: 'cm', date: '2026-11-20' }));
  const said = (pages[0]?.texts ?? []).filter(({ text }) => /^\d+%$/u.test(text.replace(/\s/gu, '')));
  expect(said).toHaveLength(11);
  const rests = (pages[0]?.strokes ?? []).find(
    ({ points: [a, b], points }) => points.length === 2 && a && b && a.y === b.y && b.x - a.x > 150 && b.x - a.x < 249,
  );
  const [a, b] = rests?.points ?? [];
  expect((b?.x ?? 0) - (a?.x ?? 0)).toBeCloseTo(200, 1);
});

/** Where upright ticks stand that begin on a level. */
const ticksAt = (strokes: readonly { readonly points: readonly Point[] }[], y: number) =>
  strokes.flatMap(({ points: [a, b], points: all }) =>
    all.length === 2 && a && b && Math.abs(a.x - b.x) < TRUE_MM && Math.abs(a.y - y) < TRUE_MM ? [a.x] : [],
  );

const width = (points: readonly { readonly x: number }[]) =>
  Math.max(...points.map((p) => p.x)) - Math.min(...points.map((p) => p.x));
