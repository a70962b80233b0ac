// The cut line round a piece: every edge's parallel at its own allowance, joined at the corners by what the edges are.
// Edges follow the ring clockwise as seen, so the outside is on the left of the direction of travel.

import { simplified, united } from './clean';
import { type Arm, type Corner, foldCorner, plainCorner, turned } from './corner';
import { firstCrossing } from './meet';
import { parallel } from './parallel';
import { endTangent, type Path, polyline, start, startTangent } from './path';
import { dot, type Point, scale, subtract } from './point';
import { polygonIsSimple } from './ring';
import { turnedCorner } from './turned-corner';

export type CutEdge = {
  readonly path: Path;
  /** How far outside the edge is cut, mm; 0 cuts on the edge itself. */
  readonly allowance: number;
  /** Turned back over its own line: a hem, a fold-back, a casing, a neckline hemmed. */
  readonly turned: boolean;
  /** Lies on the fold of the cloth: nothing is cut beyond its line. */
  readonly fold: boolean;
};

export type CutLine = {
  /** Clockwise, the first point not repeated. */
  readonly ring: readonly Point[];
  /** The same as straight lines, closed. */
  readonly path: Path;
};

/**
 * The closed ring round a seam line, simple, enclosing it (touching it on folds and where the allowance is 0), parallel
 * to each edge within 0.017 mm. Corners are mitred from the true end tangents, cut square past twice the greater
 * allowance; beside a turned edge the neighbour's cut line is mirrored over the turned edge's line; at a fold it ends on
 * the fold line. Edges without length are passed over.
 */
export function cutLine(edges: readonly CutEdge[]): CutLine {
  const drawn = edges.map(withParallel).filter((edge) => edge.points.length > 1);
  const corners = drawn.map((edge, i) => joined(drawn[i - 1] ?? drawn[drawn.length - 1] ?? edge, edge));
  const raw = simplified(assembled(drawn, corners));
  const ring = polygonIsSimple(raw) ? raw : simplified(united(raw));
  const [home] = ring;
  return { ring, path: polyline(home ? [...ring, home] : []) };
}

type Drawn = CutEdge & { readonly points: readonly Point[] };

function withParallel(edge: CutEdge): Drawn {
  return { ...edge, points: parallel(edge.path, edge.fold ? 0 : edge.allowance) };
}

/** The corner where `after` starts. */
function joined(before: Drawn, after: Drawn): Corner {
  const corner = start(after.path);
  const arriving: Arm = {
    points: [...before.points].reverse(),
    beyond: endTangent(before.path),
    allowance: before.allowance,
  };
  const leaving: Arm = {
    points: after.points,
    beyond: scale(startTangent(after.path), -1),
    allowance: after.allowance,
  };
  if (before.fold && after.fold) return { first: 0, between: [], second: 0 };
  if (after.fold) return foldCorner(corner, arriving, leaving);
  if (before.fold) return turned(foldCorner(corner, leaving, arriving));
  return turnedBack(corner, before, arriving, after, leaving) ?? plainCorner(corner, arriving, leaving);
}

/** Where both edges are turned back the wider one is turned first, and the other's cut line is mirrored over it. */
function turnedBack(corner: Point, before: Drawn, arriving: Arm, after: Drawn, leaving: Arm): Corner | undefined {
  if (!before.turned && !after.turned) return undefined;
  const leavingFirst = after.turned && (!before.turned || after.allowance > before.allowance);
  if (leavingFirst) return turnedCorner(corner, arriving, leaving);
  const mirrored = turnedCorner(corner, leaving, arriving);
  return mirrored && turned(mirrored);
}

/** One ring from what is kept of each parallel and what lies between. */
function assembled(edges: readonly Drawn[], corners: readonly Corner[]): Point[] {
  const betweens = corners.map((corner) => corner.between);
  const pieces = edges.map((edge, i) => {
    const next = (i + 1) % edges.length;
    const from = corners[i]?.second ?? 0;
    const to = edge.points.length - 1 - (corners[next]?.first ?? 0);
    if (from <= to) return edge.points.slice(from, to + 1);
    const [before, after] = [betweens[i] ?? [], betweens[next] ?? []];
    if (swapped(edge.points, from, to, before, after)) {
      const crossing = firstCrossing(before, after);
      if (crossing) {
        betweens[i] = [...before.slice(0, crossing.first + 1), crossing.point];
        betweens[next] = after.slice(crossing.second + 1);
      }
    }
    return [];
  });
  return pieces.flatMap((points, i) => [...(betweens[i] ?? []), ...points]);
}

/** Whether an edge's two corners have passed each other, so that nothing of its own parallel is left. */
function swapped(
  points: readonly Point[],
  from: number,
  to: number,
  before: readonly Point[],
  after: readonly Point[],
): boolean {
  if (from > to + 1) return true;
  const step = Math.min(Math.max(to, 0), points.length - 2);
  const [a, b] = [points[step], points[step + 1]];
  const [begin, finish] = [before[before.length - 1], after[0]];
  if (!a || !b || !begin || !finish) return false;
  return dot(subtract(finish, begin), subtract(b, a)) < 0;
}
