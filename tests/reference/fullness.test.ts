import { describe, expect, test } from 'vitest';
import { MM_PER_INCH } from '../../app/body';
import type { Shape } from '../../app/drafting/blocks/block';
import { flare } from '../../app/drafting/blocks/flare';
import { pleated } from '../../app/drafting/blocks/pleats';
import { cloths } from '../../app/drafting/garments';
import { flatten, type Path, type Point, pathLength } from '../../app/drafting/geometry';
import { gathers, meetingWidth, panelsIn, pleatedWidth, sectorReach } from '../../app/drafting/sizes/fullness';

/** Textbook values of fullness, and the geometry of sectors. */
const NEAR_MM = 0.05;

describe('gathers and pleats (textbooks of dressmaking)', () => {
  test('gathers take two to three times the finished width; thicker cloth less (common practice, no source)', () => {
    const cotton = cloths.find((cloth) => cloth.id === 'quilting-cotton');
    const fleece = cloths.find((cloth) => cloth.id === 'polar-fleece');
    expect(cotton && gathers(cotton)).toBeGreaterThanOrEqual(2);
    expect(cotton && gathers(cotton)).toBeLessThanOrEqual(3);
    expect(fleece && gathers(fleece)).toBeLessThan(2);
  });

  test('pleats that meet take three times: 50 cm finished is 20 pleats of 2.5 cm, 150 cm flat', () => {
    expect(meetingWidth(500, 20)).toBe(1500);
    expect(meetingWidth(500, 7)).toBeCloseTo(1500, 9);
  });

  test('box pleats: 60 cm and four of 12 cm are 108 cm', () => expect(pleatedWidth(600, 4, 120)).toBe(1080));

  test('knit stretch is (stretched − rest) / rest: 4 in pulled to 5 in is 25 %', () => {
    const jersey = cloths.find((cloth) => cloth.id === 'jersey');
    expect(jersey?.stretch).toBeCloseTo((5 - 4) / 4, 9);
  });
});

/** Where a line stands, mm from the centre. */
const at = (lines: Readonly<Record<string, Path>>, name: string) => lines[name]?.[0]?.from.x ?? Number.NaN;

/** The lines that were drawn. */
const linesOf = ({ lines }: Shape): Readonly<Record<string, Path>> =>
  Object.fromEntries(Object.entries(lines).flatMap(([name, path]) => (path ? [[name, path]] : [])));

describe('a pleated piece, folded as it is drawn', () => {
  const shape = (pleats: number, kind: 'knife' | 'box') => ({
    lines: linesOf(pleated(kind).draw({ flareTop: 300, flareBottom: 300, flareHeight: 100, flareOpen: null, pleats })),
  });
  /** Every fold laid on its place by its arrow: from where, to where. */
  const laid = (pleats: number, kind: 'knife' | 'box') => {
    const { lines } = shape(pleats, kind);
    return Object.keys(lines)
      .filter((name) => name.startsWith('lay-'))
      .map((name) => ({ from: lines[name]?.[0]?.from.x ?? 0, to: lines[name]?.[0]?.to.x ?? 0 }));
  };

  test.each([
    [1, 'knife'],
    [5, 'knife'],
    [1, 'box'],
    [4, 'box'],
  ] as const)('%i pleats (%s) take two thirds', (pleats, kind) => {
    const taken = laid(pleats, kind).reduce((sum, { from, to }) => sum + Math.abs(to - from), 0);
    expect(300 - taken).toBeCloseTo(100, 6);
  });

  test('every fold is drawn, and so is every place but on the edges', () => {
    const { lines } = shape(4, 'box');
    const places = Object.keys(lines).flatMap((name) => (name.startsWith('place-') ? [at(lines, name)] : []));
    for (const { from, to } of laid(4, 'box')) {
      expect(Object.keys(lines).some((name) => name.startsWith('fold-') && at(lines, name) === from)).toBe(true);
      expect([0, 300, ...places].some((place) => Math.abs(place - to) < 1e-9)).toBe(true);
    }
  });

  test('knife pleats turn one way and end evenly: half of one shows at the centre and half at the side', () => {
    const folds = laid(5, 'knife');
    const shown = 300 / 5 / 3;
    expect(folds.every(({ from, to }) => to > from)).toBe(true);
    expect(folds[0]?.from).toBeCloseTo(shown / 2, 9);
    expect(300 - (folds[4]?.to ?? 0)).toBeCloseTo(shown / 2, 9);
  });

  test('box pleats turn both ways, and their folds meet at the centre and at the side', () => {
    const folds = laid(4, 'box');
    expect(folds[0]?.to).toBeCloseTo(0, 9);
    expect(folds[folds.length - 1]?.to).toBeCloseTo(300, 9);
    expect(folds.map(({ from, to }) => Math.sign(to - from))).toEqual([-1, 1, -1, 1, -1, 1, -1, 1]);
  });

  test('no layer lies on the next pleat: what is folded under reaches no farther than the fold before', () => {
    for (const [pleats, kind] of [
      [5, 'knife'],
      [4, 'box'],
    ] as const) {
      const folds = laid(pleats, kind).map(({ from, to }) => ({ low: Math.min(from, to), high: Math.max(from, to) }));
      folds.sort((a, b) => a.low - b.low);
      const over = folds.slice(1).filter((fold, index) => fold.low < (folds[index]?.high ?? 0) - 1e-9);
      expect(over).toEqual([]);
    }
  });
});

/** Centre and radius of the circle through three points. */
function circle([a, b, c]: readonly [Point, Point, Point]): { centre: Point; radius: number } {
  const d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y));
  const square = (p: Point) => p.x * p.x + p.y * p.y;
  const x = (square(a) * (b.y - c.y) + square(b) * (c.y - a.y) + square(c) * (a.y - b.y)) / d;
  const y = (square(a) * (c.x - b.x) + square(b) * (a.x - c.x) + square(c) * (b.x - a.x)) / d;
  return { centre: { x, y }, radius: Math.hypot(a.x - x, a.y - y) };
}

function radiusOf(path: Path): number {
  const points = flatten(path, 0.001);
  const third = (share: number) => points[Math.round((points.length - 1) * share)] ?? { x: 0, y: 0 };
  return circle([third(0), third(0.5), third(1)]).radius;
}

describe('circle skirts (every handbook; geometry)', () => {
  const waist = 26 * MM_PER_INCH;
  test.each([
    ['full', 2 * Math.PI, 4.14],
    ['half', Math.PI, 8.28],
    ['quarter', Math.PI / 2, 16.55],
  ])('a %s circle on a 26 in waist', (_, turned, inches) => {
    const length = 300;
    const { edges } = flare.draw({
      flareTop: waist / 4,
      flareBottom: (waist + turned * length) / 4,
      flareHeight: length,
      flareOpen: null,
    });
    const radius = radiusOf(edges.top ?? []);
    expect(Math.abs(radius - waist / turned)).toBeLessThan(NEAR_MM);
    expect(radius / MM_PER_INCH).toBeCloseTo(inches, 2);
    expect(Math.abs(radiusOf(edges.bottom ?? []) - radius - length)).toBeLessThan(NEAR_MM);
  });

  test('a waist drafted for another angle is told apart', () => {
    const { edges } = flare.draw({
      flareTop: waist / 4,
      flareBottom: waist / 4 + 460,
      flareHeight: 300,
      flareOpen: null,
    });
    expect(Math.abs(radiusOf(edges.top ?? []) - waist / (2 * Math.PI))).toBeGreaterThan(NEAR_MM);
  });
});

describe('a cape is the shell of a cone, rolled out (geometry: arc = radius × angle)', () => {
  test.each([
    [100, 260, 180],
    [60, 500, 210],
    [200, 210, 90],
  ])('neck %i, hem %i, length %i', (neck, hem, length) => {
    const { edges } = flare.draw({ flareTop: neck, flareBottom: hem, flareHeight: length, flareOpen: null });
    const angle = (hem - neck) / length;
    const [top, bottom] = [edges.top ?? [], edges.bottom ?? []];
    expect(Math.abs(pathLength(top) - neck)).toBeLessThan(NEAR_MM);
    expect(Math.abs(pathLength(bottom) - hem)).toBeLessThan(NEAR_MM);
    expect(Math.abs(radiusOf(top) * angle - neck)).toBeLessThan(NEAR_MM);
    expect(Math.abs(radiusOf(bottom) * angle - hem)).toBeLessThan(NEAR_MM);
    const across = flatten(bottom, 0.01).map((p) => p.x);
    expect(Math.abs(sectorReach(neck, hem, length) - Math.max(...across))).toBeLessThan(NEAR_MM);
  });
});

test('an edge wider than cloth is cut in as many equal panels as it takes, never fewer than two', () => {
  expect([300, 2200, 2201, 5000].map(panelsIn)).toEqual([2, 2, 3, 5]);
});
