import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import {
  angleBetween,
  arc,
  cutLine,
  distance,
  flatten,
  type Path,
  type Point,
  point,
  polygonIsSimple,
  polyline,
  signedArea,
  subtract,
  transformPath,
} from '../../app/drafting/geometry';
import { apart, toRing, within } from '../geometry/near';
import { randomOutline, sewn } from '../geometry/outlines';
import { type Random, seeded } from '../toys/seeded';

/** What a true parallel may be off, mm: measured beforehand over 180 random outlines. */
const PARALLEL_MM = 0.017;

/** A corner cut square reaches √5 = 2.24 allowances from the seam's corner at most. */
const REACH = 2.25;

const ALLOWANCES = [3, 6, 12] as const;

describe.each(ALLOWANCES)('a cut line at %d mm', (allowance) => {
  it('round a circle is a circle', () => {
    const { ring } = cutLine(
      sewn([arc(point(0, 0), 40, 0, Math.PI), arc(point(0, 0), 40, Math.PI, 2 * Math.PI)], allowance),
    );
    for (const [i, p] of ring.entries()) {
      const next = ring[(i + 1) % ring.length] ?? p;
      expect(Math.abs(distance(p, point(0, 0)) - 40 - allowance)).toBeLessThan(0.003);
      expect(distance(point((p.x + next.x) / 2, (p.y + next.y) / 2), point(0, 0))).toBeGreaterThan(
        40 + allowance - PARALLEL_MM,
      );
    }
  });

  it('round an ellipse is its parallel in closed form', () => {
    const [a, b] = [60, 35];
    const quarters = [0, 1, 2, 3].map((i) =>
      transformPath(arc(point(0, 0), 1, (i * Math.PI) / 2, ((i + 1) * Math.PI) / 2), (p) => point(a * p.x, b * p.y)),
    );
    const exact = Array.from({ length: 3600 }, (_, i) => {
      const [cos, sin] = [Math.cos((i * Math.PI) / 1800), Math.sin((i * Math.PI) / 1800)];
      const across = Math.hypot(b * cos, a * sin);
      return point(a * cos + (allowance * b * cos) / across, b * sin + (allowance * a * sin) / across);
    });
    expect(apart(cutLine(sewn(quarters, allowance)).ring, exact)).toBeLessThan(PARALLEL_MM);
  });

  it('round polygons is an independent library’s mitred buffer', () => {
    const random = seeded(3);
    let compared = 0;
    while (compared < 60) {
      const outline = straight(random);
      if (sharpest(outline) < Math.PI / 2.9) continue;
      compared += 1;
      const sides = outline.map((p, i) => polyline([p, outline[(i + 1) % outline.length] ?? p]));
      const { ring } = cutLine(sewn(sides, allowance));
      // Of points almost in line either may drop some.
      expect(apart(ring, buffered(outline, allowance))).toBeLessThan(0.005);
    }
  });

  it('round curved outlines covers the same as an independent library’s round buffer, but for the mitres', () => {
    const random = seeded(4);
    for (let i = 0; i < 6; i += 1) {
      const edges = randomOutline(random);
      const corners = edges.map((edge) => flatten(edge, 1)[0] ?? point(0, 0));
      const { ring } = cutLine(sewn(edges, allowance));
      const other = buffered(flatten(edges.flat(), 0.004).slice(0, -1), allowance, 'round');
      const away = (p: Point) => corners.every((corner) => distance(corner, p) > REACH * allowance);
      // Nothing of the round buffer lies outside; away from the corners the two are one line.
      for (const p of other) expect(within(p, ring) ? 0 : toRing(p, ring)).toBeLessThan(PARALLEL_MM);
      for (const p of [...ring, ...other].filter(away)) {
        expect(Math.max(toRing(p, ring), toRing(p, other))).toBeLessThan(PARALLEL_MM);
      }
    }
  });
});

describe('a hollow tighter than its allowance', () => {
  it('is filled: the union with an independent library changes nothing', () => {
    const notch: Path = [
      ...polyline([point(0, 0), point(40, 0), point(40, 20)]),
      ...arc(point(44, 20), 4, Math.PI, 0),
      ...polyline([point(48, 20), point(48, 0), point(90, 0)]),
    ];
    const rest = polyline([point(90, 0), point(90, 60), point(0, 60), point(0, 0)]);
    const { ring, path } = cutLine(sewn([notch, rest], 6));
    expect(polygonIsSimple(ring)).toBe(true);
    expect(signedArea(path)).toBeCloseTo((90 + 12) * (60 + 12), 6);
    const pairs = ring.map((p): [number, number] => [p.x, p.y]);
    expect(polygonClipping.union([pairs])[0]?.length).toBe(1);
  });
});

function straight(random: Random): readonly Point[] {
  const outline = randomOutline(random).map((edge) => flatten(edge, 50)[0] ?? point(0, 0));
  return polygonIsSimple(outline) ? outline : straight(random);
}

/** The least inner or outer angle at a corner: under 60° a mitre is cut square, and libraries differ in how. */
function sharpest(outline: readonly Point[]): number {
  const angles = outline.map((p, i) => {
    const before = outline[(i + outline.length - 1) % outline.length] ?? p;
    const after = outline[(i + 1) % outline.length] ?? p;
    return angleBetween(subtract(before, p), subtract(after, p));
  });
  return Math.min(...angles);
}

function buffered(
  outline: readonly Point[],
  allowance: number,
  joins: 'mitred' | 'round' = 'mitred',
): readonly Point[] {
  const factory = new GeometryFactory();
  const coordinates = [...outline, ...outline.slice(0, 1)].map((p) => new Coordinate(p.x, p.y));
  const polygon = factory.createPolygon(factory.createLinearRing(coordinates));
  const join = joins === 'mitred' ? BufferParameters.JOIN_MITRE : BufferParameters.JOIN_ROUND;
  const parameters = new BufferParameters(64, BufferParameters.CAP_FLAT, join, 2);
  parameters.setSimplifyFactor(0);
  const grown = BufferOp.bufferOp(polygon, allowance, parameters);
  const shell = grown.getExteriorRing().getCoordinates() as readonly { readonly x: number; readonly y: number }[];
  return shell.slice(1).map((c) => point(c.x, c.y));
}
