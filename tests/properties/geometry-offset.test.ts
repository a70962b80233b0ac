import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CutEdge,
  cutLine,
  flatten,
  mirrorPath,
  type Point,
  reversePath,
  ringIsSimple,
  rotate,
  scale,
  signedArea,
  transformPath,
} from '../../app/drafting/geometry';
import { apart, outsideBy, strays, tooNear, toRing } from '../geometry/near';
import { randomOutline, randomPiece, sewn } from '../geometry/outlines';
import { seeded } from '../toys/seeded';

/** What a true parallel may be off, mm, over 180 random outlines. */
const PARALLEL_MM = 0.017;

/** Chords cut to 0.01 mm may differ by that on either side, mm. */
const TWO_CHORDS_MM = 0.02;

const seed = fc.integer({ min: 1, max: 2 ** 31 });
const outlines = seed.map((s) => randomOutline(seeded(s)));
const pieces = seed.map((s) => randomPiece(seeded(s)));

describe('cut lines of one allowance, over 180 random outlines', () => {
  it.each([3, 6, 12])('are true parallels at %d mm: nowhere nearer, nowhere astray', (allowance) => {
    const check = (paths: ReturnType<typeof randomOutline>): void => {
      const edges = sewn(paths, allowance);
      const { ring, path } = cutLine(edges);
      expect(ringIsSimple(path)).toBe(true);
      expect(signedArea(path)).toBeGreaterThan(signedArea(paths.flat()));
      expect(outsideBy(paths.flat(), ring)).toBe(0);
      expect(tooNear(ring, paths.flat(), allowance)).toBeLessThan(PARALLEL_MM);
      expect(strays(ring, edges, 24, 2.25 * allowance)).toBeLessThan(PARALLEL_MM);
    };
    fc.assert(fc.property(outlines, check), { numRuns: 180, seed: 1 });
  });
});

describe('cut lines of any allowances, turned back or not', () => {
  it('are simple, enclose the seam line, and stay near it', () => {
    const check = (edges: readonly CutEdge[]): void => {
      const { ring, path } = cutLine(edges);
      const seam = edges.flatMap((edge) => edge.path);
      const line = flatten(seam, 0.01);
      const widest = Math.max(...edges.map((edge) => edge.allowance));
      expect(ringIsSimple(path)).toBe(true);
      expect(signedArea(path)).toBeGreaterThan(0);
      // Chords on an edge without allowance may cut in by their own tolerance.
      expect(outsideBy(seam, ring)).toBeLessThan(0.004);
      expect(ring.length).toBeLessThan(500);
      for (const p of ring) expect(toRing(p, line)).toBeLessThan(3.5 * widest);
    };
    fc.assert(fc.property(pieces, check), { numRuns: 300, seed: 2 });
  });

  it('turn, mirror and grow with the piece', () => {
    const angles = fc.double({ min: -3, max: 3, noNaN: true });
    const factors = fc.double({ min: 0.5, max: 2, noNaN: true });
    const check = (edges: readonly CutEdge[], angle: number, factor: number): void => {
      const { ring } = cutLine(edges);
      const turn = (p: Point) => rotate(p, angle);
      const turned = cutLine(edges.map((edge) => ({ ...edge, path: transformPath(edge.path, turn) })));
      expect(apart(turned.ring, ring.map(turn))).toBeLessThan(0.001);
      const mirrored = cutLine(edges.map((edge) => ({ ...edge, path: reversePath(mirrorPath(edge.path)) })).reverse());
      expect(apart(mirrored.ring, ring.map(flipped))).toBeLessThan(TWO_CHORDS_MM);
      const grow = (p: Point) => scale(p, factor);
      const grown = cutLine(
        edges.map((edge) => ({ ...edge, allowance: edge.allowance * factor, path: transformPath(edge.path, grow) })),
      );
      expect(apart(grown.ring, ring.map(grow))).toBeLessThan(TWO_CHORDS_MM * Math.max(1, factor));
    };
    fc.assert(
      fc.property(
        outlines.map((o) => sewn(o, 6)),
        angles,
        factors,
        check,
      ),
      { numRuns: 60, seed: 3 },
    );
    fc.assert(fc.property(pieces, angles, factors, check), { numRuns: 60, seed: 4 });
  });
});

function flipped(p: Point): Point {
  return { x: -p.x, y: p.y };
}
