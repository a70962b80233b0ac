// The cut line round a piece: every edge's parallel at its own allowance, joined at the corners by what the edges are.
// Edges follow the ring clockwise as seen, so the outside is on the left of the direction of travel.

import { norm, type Point, scale } from '../../body/point';
import { assembled } from './assembled';
import { simplified, united } from './clean';
import { type Corner, foldCorner, plainCorner, turned } from './corner';
import { tangent } from './curve';
import { flatten } from './flatten';
import { firstCrossing } from './meet';
import { parallel } from './parallel';
import { endTangent, type Path, polyline, start, startTangent } from './path';
import { polygonIsSimple } from './ring';
import { type LongArm, turnedCorner } from './turned-corner';

/** How closely an edge is followed to see whether a flank runs into it, mm. */
const SEEN_MM = 0.05;

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
 * allowance; beside a turned edge the neighbour's cut line is mirrored over the turned edge's line, unless its shape
 * leaves no room for that; at a fold it ends on the fold line. Edges without length are passed over.
 */
export function cutLine(edges: readonly CutEdge[]): CutLine {
  const drawn = edges.map(withParallel).filter((edge) => edge.points.length > 1);
  const corners = drawn.map((edge, i) => joined(drawn[i - 1] ?? drawn[drawn.length - 1] ?? edge, edge));
  const { ring: whole, overrun } = assembled(
    drawn.map((edge) => edge.points),
    corners,
  );
  if (overrun.some((i) => drawn[i]?.turned)) {
    return cutLine(drawn.map((edge, i) => (overrun.includes(i) ? { ...edge, turned: false } : edge)));
  }
  const raw = simplified(whole);
  const ring = polygonIsSimple(raw) ? raw : simplified(united(raw));
  const [home] = ring;
  return { ring, path: polyline(home ? [...ring, home] : []) };
}

type Drawn = CutEdge & { readonly points: readonly Point[] };

function withParallel(edge: CutEdge): Drawn {
  const path = edge.path.filter((curve) => norm(tangent(curve, 0)) > 0);
  const allowance = edge.fold ? 0 : edge.allowance;
  return { ...edge, path, allowance, points: parallel(path, allowance) };
}

/** The corner where `after` starts. */
function joined(before: Drawn, after: Drawn): Corner {
  const corner = start(after.path);
  const points = [...before.points].reverse();
  const back = scale(startTangent(before.path), -1);
  const arriving: LongArm = { points, beyond: endTangent(before.path), back, allowance: before.allowance };
  const leaving: LongArm = { ...after, beyond: scale(startTangent(after.path), -1), back: endTangent(after.path) };
  if (before.fold && after.fold) return { first: 0, between: [], second: 0 };
  if (after.fold) return foldCorner(corner, arriving, leaving);
  if (before.fold) return turned(foldCorner(corner, leaving, arriving));
  return turnedBack(corner, before, arriving, after, leaving) ?? plainCorner(corner, arriving, leaving);
}

/** Where both edges are turned back the wider one is turned first, and the other's cut line is mirrored over it. */
function turnedBack(
  corner: Point,
  before: Drawn,
  arriving: LongArm,
  after: Drawn,
  leaving: LongArm,
): Corner | undefined {
  if (!before.turned && !after.turned) return undefined;
  const leavingFirst = after.turned && (!before.turned || after.allowance > before.allowance);
  const mirrored = leavingFirst ? turnedCorner(corner, arriving, leaving) : turnedCorner(corner, leaving, arriving);
  if (!mirrored || crossesEdge(mirrored.between, leavingFirst ? after : before)) return undefined;
  return leavingFirst ? mirrored : turned(mirrored);
}

/** Whether a mirrored flank would run into the edge it is turned over, which bends outwards past its own tangent. */
function crossesEdge(flank: readonly Point[], edge: Drawn): boolean {
  if (edge.path.every((curve) => curve.kind === 'line')) return false;
  return firstCrossing(flank, flatten(edge.path, SEEN_MM).slice(1, -1)) !== undefined;
}
