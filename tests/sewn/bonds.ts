import type { Draft } from '../../app/drafting/draft-types';
import type { Point } from '../../app/drafting/geometry';
import type { Bond } from './cloth';
import type { Panel } from './panels';
import { at } from './space';
import type { Triangle } from './triangles';

/** Of a triangle's side at most so much is corrected in one step: more and less settle alike, in more steps. */
const FIRM = 0.3;
/** Across the grain's square cloth gives so much more than along its threads (common practice: it gives on the bias). */
const BIAS = 6;
/** Pressed together cloth folds, finer than a mesh shows: it resists so much less. */
const FOLDS = 12;
/** Where it is gathered into a seam it does not resist at all, to speak of. */
const GATHERED = 500;
/** Bending beside stretching, mm²: as a middling cotton of 0.15 kg/m², 10 µN·m, seen at the scale of its fall. */
const BENDING_MM2 = 0.033;
/** A hand's breadth (200 mm) of hanging cloth stretches by a thousandth: its fall in a step follows. */
const HANGS_MM = 2e5;

/** An elastic is drawn out as hard as cloth of this width, mm: 0.7 N for a tenth, 8 mm wide (common practice, no source). */
const ELASTIC_MM = 23;
/** What of an elastic's length is sewn over its other end, mm: as the drafts join it. */
const JOIN_MM = 20;

/** What draws edges in: the elastics of a draft, along the edges of their seams. */
export function elastics(
  { notions, seams }: Draft,
  panels: readonly Panel[],
  of: (panel: Panel, point: number) => number,
  edge: number,
): Bond[] {
  return notions.flatMap(({ kind, place, length, count = 1 }) => {
    if (kind !== 'elastic') return [];
    const refs = seams.filter(({ name }) => name.startsWith(place)).flatMap(({ first }) => first);
    const runs = panels.flatMap((panel) =>
      [...panel.edges].flatMap(([name, points]) => {
        const meant = name === place || refs.some((ref) => ref.piece === panel.half.piece.name && ref.edge === name);
        return meant ? [{ panel, points }] : [];
      }),
    );
    const whole = runs.reduce((sum, { points }) => sum + (points[points.length - 1]?.along ?? 0), 0);
    const drawn = (count * (length - JOIN_MM)) / Math.max(whole, 1);
    if (drawn >= 1) return [];
    return runs.flatMap(({ panel, points }) =>
      points.slice(1).map(({ along, point }, n): Bond => {
        const before = points[n] ?? { along, point };
        const rest = (along - before.along) * drawn;
        const pull = (rest * FIRM) / (ELASTIC_MM * edge * edge);
        return {
          of: [of(panel, before.point), of(panel, point)],
          by: [1, -1],
          rest,
          pull,
          push: Number.POSITIVE_INFINITY,
        };
      }),
    );
  });
}

/** How far cloth falls in a step, mm, whose mesh has edges so long. */
export const fallOf = (edge: number): number => (edge * edge) / (FIRM * HANGS_MM);

export const areaOf = (points: readonly Point[], [a, b, c]: Triangle): number => {
  const [p, q, r] = [points[a], points[b], points[c]];
  return p && q && r ? Math.abs((q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y)) / 2 : 0;
};

/** Shares of a triangle's corners in how cloth runs along its threads and across: Σ share·place is one long at rest. */
export function threads(points: readonly Point[], [a, b, c]: Triangle, grain: Point): [number[], number[]] {
  const [p, q, r] = [points[a], points[b], points[c]];
  if (!p || !q || !r) return [[], []];
  const turned = (to: Point) => [
    (to.x - p.x) * grain.x + (to.y - p.y) * grain.y,
    -(to.x - p.x) * grain.y + (to.y - p.y) * grain.x,
  ];
  const [[qx = 0, qy = 0], [rx = 0, ry = 0]] = [turned(q), turned(r)];
  const whole = qx * ry - rx * qy;
  const shares = (one: number, two: number) => [-one - two, one, two];
  return [shares(ry / whole, -qy / whole), shares(-rx / whole, qx / whole)];
}

/** What holds a panel together; `of` gives the point of the garment for each of its own, `full` are its points that are gathered in. */
export function bondsOf(
  { points, triangles, half }: Panel,
  of: (point: number) => number,
  edge: number,
  full: ReadonlySet<number>,
): Bond[] {
  const [from, to] = half.piece.grain;
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const grain = { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
  const held = triangles.flatMap((triangle): Bond[] => {
    const [along, across] = threads(points, triangle, grain);
    const gives = FIRM / (edge * edge * areaOf(points, triangle));
    const bond = (by: number[], more: number): Bond => ({
      of: triangle.map(of),
      by,
      rest: 1,
      pull: more * gives,
      push: more * gives * (triangle.some((point) => full.has(point)) ? GATHERED : FOLDS),
    });
    const slanted = (sign: number) => along.map((each, n) => (each + sign * at(across, n)) * Math.SQRT1_2);
    return [bond(along, 1), bond(across, 1), bond(slanted(1), BIAS), bond(slanted(-1), BIAS)];
  });
  return [...held, ...bends({ points, triangles }, of, edge)];
}

/** Two triangles that share a side are held flat (Bergou, Wardetzky, Harmon, Zorin and Grinspun 2006). */
function bends(
  { points, triangles }: Pick<Panel, 'points' | 'triangles'>,
  of: (point: number) => number,
  edge: number,
): Bond[] {
  const sides = new Map<string, { readonly off: number; readonly area: number }>();
  return triangles.flatMap((triangle) =>
    [0, 1, 2].flatMap((k): Bond[] => {
      const [a, b, off] = [triangle[k] ?? 0, triangle[(k + 1) % 3] ?? 0, triangle[(k + 2) % 3] ?? 0];
      const area = areaOf(points, triangle);
      const other = sides.get(`${b} ${a}`);
      sides.set(`${a} ${b}`, { off, area });
      if (!other) return [];
      const cot = (tip: number, one: number, two: number) => cotangent(points, tip, one, two);
      const [c1, c2, c3, c4] = [cot(a, b, off), cot(a, b, other.off), cot(b, a, off), cot(b, a, other.off)];
      const gives = ((area + other.area) * FIRM) / (3 * BENDING_MM2 * edge * edge);
      return [
        {
          of: [a, b, off, other.off].map(of),
          by: [c3 + c4, c1 + c2, -c1 - c3, -c2 - c4],
          rest: 0,
          pull: gives,
          push: gives,
        },
      ];
    }),
  );
}

function cotangent(points: readonly Point[], tip: number, one: number, two: number): number {
  const [p, q, r] = [points[tip], points[one], points[two]];
  if (!p || !q || !r) return 0;
  const [ax, ay, bx, by] = [q.x - p.x, q.y - p.y, r.x - p.x, r.y - p.y];
  return (ax * bx + ay * by) / Math.max(1e-9, Math.abs(ax * by - ay * bx));
}
