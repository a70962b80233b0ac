import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import {
  type CutEdge,
  cutLine,
  dot,
  hermite,
  left,
  line,
  mirrorPath,
  type Path,
  type Point,
  point,
  polygonIsSimple,
  reversePath,
  rotate,
  scale,
  signedArea,
  subtract,
  unit,
} from '../../app/drafting/geometry';
import { apart, toRing, within } from '../geometry/near';
import { type Random, seeded } from '../toys/seeded';

// No source: that a hem folded over its line must lie on the piece is what folding does (a mirror image).

describe('what is turned back', () => {
  it('of a tapered sleeve’s hem flares out just as the sleeve does, by its tangent', () => {
    const narrow = trapezoid({ top: 100, bottom: 60, height: 90 }, 6, 15);
    const { ring } = cutLine(narrow);
    const slope = 20 / 90;
    const across = (6 / 90) * Math.hypot(90, 20);
    const tip = (depth: number) => 30 + across + slope * depth;
    expect(
      apart(ring, [
        point(50 + across + slope * 6, -6),
        point(30 + across, 90),
        point(tip(15), 105),
        point(-tip(15), 105),
        point(-30 - across, 90),
        point(-50 - across - slope * 6, -6),
      ]),
    ).toBeLessThan(1e-9);
  });

  it('narrows with a flared hem, and comes to a point where the flanks meet first', () => {
    expect(cutLine(trapezoid({ top: 60, bottom: 100, height: 40 }, 6, 10)).ring).toHaveLength(6);
    const flanksMeet = cutLine(trapezoid({ top: 4, bottom: 30, height: 10 }, 1, 20));
    expect(polygonIsSimple(flanksMeet.ring)).toBe(true);
    expect(Math.max(...flanksMeet.ring.map((p) => p.y))).toBeLessThan(10 + 13.5);
  });

  it('lies on the piece, over 150 random pieces with curved sides', () => {
    const random = seeded(31);
    for (let i = 0; i < 150; i += 1) {
      const { edges, from, to } = hemmed(random);
      const { ring } = cutLine(edges);
      expect(polygonIsSimple(ring)).toBe(true);
      const along = unit(subtract(to, from));
      const turnedBack = ring.filter((p) => beyond(p, from, along) > 0.001);
      expect(turnedBack.length).toBeGreaterThan(1);
      for (const p of turnedBack) {
        const folded = mirrored(p, from, along);
        expect(within(folded, ring) ? 0 : toRing(folded, ring)).toBeLessThan(0.02);
      }
    }
  });

  it('would spill over if it were mitred: the check above tells the two apart', () => {
    const edges = trapezoid({ top: 100, bottom: 60, height: 90 }, 6, 15);
    const { ring } = cutLine(edges.map((edge) => ({ ...edge, turned: false })));
    const flared = cutLine(
      trapezoid({ top: 60, bottom: 100, height: 90 }, 6, 15).map((e) => ({ ...e, turned: false })),
    );
    const spills = [ring, flared.ring].map((r) =>
      Math.max(
        ...r
          .filter((p) => p.y > 90.001)
          .map((p) => {
            const folded = point(p.x, 180 - p.y);
            return within(folded, r) ? 0 : toRing(folded, r);
          }),
      ),
    );
    expect(Math.max(...spills)).toBeGreaterThan(1);
  });
});

describe('a fold', () => {
  it('is never crossed, and a half opened out is the whole, over 150 random pieces', () => {
    const random = seeded(32);
    for (let i = 0; i < 150; i += 1) {
      const half = onFold(random);
      const { ring } = cutLine(half);
      expect(Math.min(...ring.map((p) => p.x))).toBe(0);
      const cut = half.slice(0, -1);
      const whole = cutLine([...cut, ...cut.map(mirroredEdge).reverse()]);
      expect(apart(ring, rightHalf(whole.ring))).toBeLessThan(0.02);
    }
  });
});

describe('edges of different allowances', () => {
  it('step along the wider one’s normal where they run on into each other', () => {
    const edges = [
      edge([line(point(0, 0), point(50, 0))], 6),
      edge([line(point(50, 0), point(100, 0))], 12),
      edge([line(point(100, 0), point(100, 50))], 6),
      edge([line(point(100, 50), point(0, 50))], 6),
      edge([line(point(0, 50), point(0, 0))], 6),
    ];
    const step = [point(-6, -6), point(50, -6), point(50, -12), point(106, -12), point(106, 56), point(-6, 56)];
    expect(apart(cutLine(edges).ring, step)).toBeLessThan(1e-9);
  });

  it('of nothing are cut on the edge itself', () => {
    const edges = trapezoid({ top: 80, bottom: 80, height: 50 }, 0, 0);
    expect(cutLine(edges).ring).toHaveLength(4);
    expect(signedArea(cutLine(edges).path)).toBeCloseTo(4000, 9);
  });
});

type Sizes = { readonly top: number; readonly bottom: number; readonly height: number };

function trapezoid({ top, bottom, height }: Sizes, seam: number, hem: number): readonly CutEdge[] {
  const [a, b] = [point(-top / 2, 0), point(top / 2, 0)];
  const [c, d] = [point(bottom / 2, height), point(-bottom / 2, height)];
  const sides = [edge([line(a, b)], seam), edge([line(b, c)], seam), edge([line(c, d)], hem, hem > 0)];
  return [...sides, edge([line(d, a)], seam)];
}

function edge(path: Path, allowance: number, turned = false): CutEdge {
  return { path, allowance, turned, fold: false };
}

/** Curved sides meeting a straight hem at 50° to 130°, somewhere on the plane. */
function hemmed(random: Random): { readonly edges: readonly CutEdge[]; readonly from: Point; readonly to: Point } {
  const between = (low: number, high: number) => low + (high - low) * random();
  const tilt = between(0, 2 * Math.PI);
  const put = (x: number, y: number) => rotate(point(x, y), tilt);
  const [a, b, c, d] = [put(-between(30, 50), 0), put(between(30, 50), 0), put(40, 90), put(-40, 90)];
  const toHem = (angle: number) => put(Math.cos(angle), Math.sin(angle));
  const rightSide = hermite(b, put(0, 1), c, toHem(between(0.9, 2.2)), 0.3, 0.3);
  const leftSide = hermite(d, scale(toHem(between(0.9, 2.2)), -1), a, put(0, -1), 0.3, 0.3);
  const seam = between(3, 8);
  const hem = between(8, 20);
  return {
    edges: [edge([line(a, b)], seam), edge([rightSide], seam), edge([line(c, d)], hem, true), edge([leftSide], seam)],
    from: c,
    to: d,
  };
}

/** Half a piece on the fold x = 0: its ends on the fold may run in at 40° to 130°. */
function onFold(random: Random): readonly CutEdge[] {
  const between = (low: number, high: number) => low + (high - low) * random();
  const from = (angle: number) => point(Math.sin(angle), -Math.cos(angle));
  const [top, out, low] = [point(0, between(-10, 20)), point(between(40, 60), 0), point(between(40, 60), 80)];
  const end = point(0, between(75, 100));
  const neck = hermite(top, from(between(0.9, 2.3)), out, point(1, 0), 0.35, 0.35);
  const hem = hermite(low, point(-1, 0), end, unit(point(-1, between(-0.5, 0.5))), 0.35, 0.35);
  const seam = between(3, 7);
  return [
    edge([neck], seam),
    edge([line(out, low)], seam),
    edge([hem], seam),
    { ...edge([line(end, top)], 0), fold: true },
  ];
}

function mirroredEdge(half: CutEdge): CutEdge {
  return { ...half, path: reversePath(mirrorPath(half.path)) };
}

/** How far p lies to the left of the line, mm: a clockwise piece lies on its edges' right. */
function beyond(p: Point, from: Point, along: Point): number {
  return dot(left(along), subtract(p, from));
}

function mirrored(p: Point, from: Point, along: Point): Point {
  return subtract(p, scale(left(along), 2 * beyond(p, from, along)));
}

function rightHalf(ring: readonly Point[]): readonly Point[] {
  const pairs = ring.map((p): [number, number] => [p.x, p.y]);
  const box: [number, number][] = [
    [0, -500],
    [500, -500],
    [500, 500],
    [0, 500],
  ];
  const [outer = []] = polygonClipping.intersection([pairs], [box])[0] ?? [];
  return outer.slice(1).map(([x, y]) => point(x, y));
}
