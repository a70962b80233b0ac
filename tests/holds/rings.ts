import type { Edge, Piece } from '../../app/drafting/draft-types';
import {
  distance,
  endTangent,
  flatten,
  left,
  type Path,
  type Point,
  pointAtLength,
  ringIsSimple,
  signedArea,
  startTangent,
} from '../../app/drafting/geometry';
import { inside, toChain, toRing } from './near';

/** Ends of neighbouring edges are the same point, but for rounding. */
const SAME_MM = 1e-6;
/** An edge's stated length against its own path (issue: lengths within 0.05 mm); the cut line against the allowance. */
const LENGTH_MM = 0.05;
const ALLOWANCE_MM = 0.1;
/** On the fold 90° ± 1.5°. */
const SQUARE = (1.5 * Math.PI) / 180;
/** How far a ring may stand beyond the fold line: rounding only. */
const BEYOND_FOLD_MM = 1e-6;
const FLAT_MM = 0.01;
/** These end in points on their folds. */
const POINTED = /^(gusset|gore|gore-front|gore-back)$/;
const FINE_MM = 0.002;

/** What is broken in one piece, a line each: closed, simple, clockwise, enclosed, true to its allowances, square on the fold. */
export function brokenRings(piece: Piece): string[] {
  return [
    ...numbers(piece),
    ...ring(piece),
    ...lengths(piece),
    ...enclosed(piece),
    ...allowances(piece),
    ...fold(piece),
    ...grain(piece),
  ].map((fault) => `${piece.name}: ${fault}`);
}

function numbers(piece: Piece): string[] {
  const flat = [...piece.seamLine, ...piece.cutLine, ...piece.lines.flatMap((line) => line.path)];
  const points = flat.flatMap((curve) =>
    curve.kind === 'cubic' ? [curve.from, curve.out, curve.into, curve.to] : [curve.from, curve.to],
  );
  return points.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y)) ? [] : ['a coordinate is not a number'];
}

function ring(piece: Piece): string[] {
  const faults: string[] = [];
  piece.edges.forEach((edge, index) => {
    const next = piece.edges[(index + 1) % piece.edges.length];
    const [last, first] = [edge.path[edge.path.length - 1]?.to, next?.path[0]?.from];
    if (!last || !first || distance(last, first) > SAME_MM)
      faults.push(`edge ${edge.name} does not meet ${next?.name}`);
  });
  if (new Set(piece.edges.map((edge) => edge.name)).size < piece.edges.length) faults.push('edge names repeat');
  if (!ringIsSimple(piece.seamLine)) faults.push('seam line crosses itself');
  if (!ringIsSimple(piece.cutLine)) faults.push('cut line crosses itself');
  if (signedArea(piece.seamLine) <= 0) faults.push('seam line is not clockwise');
  if (signedArea(piece.cutLine) <= 0) faults.push('cut line is not clockwise');
  return faults;
}

/** Each edge is as long as its own path data says, measured here by chords so short that they cannot hide a difference. */
function lengths(piece: Piece): string[] {
  return piece.edges.flatMap((edge) => {
    const chords = flatten(edge.path, FINE_MM);
    const along = chords
      .slice(1)
      .reduce((sum, p, n) => sum + Math.hypot(p.x - (chords[n]?.x ?? 0), p.y - (chords[n]?.y ?? 0)), 0);
    const off = Math.abs(along - edge.length);
    return off > LENGTH_MM || !(edge.length > 0.5) ? [`edge ${edge.name} is ${edge.length} long, off by ${off}`] : [];
  });
}

function enclosed(piece: Piece): string[] {
  const cut = flatten(piece.cutLine, FLAT_MM);
  const outside = flatten(piece.seamLine, 0.5).filter((p) => !inside(p, cut) && toRing(p, cut) > FLAT_MM * 2);
  return outside.length > 0 ? [`${outside.length} points of the seam line lie outside the cut line`] : [];
}

/** Midway along an edge the cut line runs at the edge's allowance: neither nearer nor, straight across, farther. */
function allowances(piece: Piece): string[] {
  const cut = flatten(piece.cutLine, FLAT_MM);
  return piece.edges.flatMap((edge) => {
    if (edge.role === 'fold') return [];
    const faults = clearOfCorners(piece, edge).filter((s) => {
      const { point, tangent } = pointAtLength(edge.path, s);
      const across = { x: point.x + left(tangent).x * edge.allowance, y: point.y + left(tangent).y * edge.allowance };
      return Math.abs(toRing(point, cut) - edge.allowance) > ALLOWANCE_MM || toRing(across, cut) > ALLOWANCE_MM;
    });
    return faults.length > 0
      ? [`edge ${edge.name}: ${faults.length} places off its allowance of ${edge.allowance}`]
      : [];
  });
}

/** Places along an edge that no corner's own rules reach and no other edge comes near. */
function clearOfCorners(piece: Piece, edge: Edge): number[] {
  const widest = Math.max(...piece.edges.map((each) => each.allowance));
  const margin = 2.5 * widest;
  const others = piece.edges.filter((each) => each !== edge).map((each) => flatten(each.path, 0.2));
  return [0.2, 0.35, 0.5, 0.65, 0.8]
    .map((share) => share * edge.length)
    .filter((s) => s > margin && edge.length - s > margin && !hollowNear(edge, s))
    .filter((s) => {
      const { point } = pointAtLength(edge.path, s);
      return others.every((other) => toChain(point, other) > edge.allowance + widest);
    });
}

/** How finely a hollow is looked for, mm. */
const HOLLOW_STEP_MM = 0.5;

/** Within its own allowance of a place, an edge is hollower than that allowance: the cut line is trimmed there (geometry). */
function hollowNear({ path, length, allowance }: Edge, s: number): boolean {
  const ways: number[] = [];
  for (let at = Math.max(s - allowance, 0); at <= Math.min(s + allowance, length); at += HOLLOW_STEP_MM) {
    const { tangent } = pointAtLength(path, at);
    ways.push(Math.atan2(tangent.y, tangent.x));
  }
  const turn = (from: number, to: number) => Math.atan2(Math.sin(to - from), Math.cos(to - from));
  return allowance > 0 && ways.slice(1).some((way, n) => -turn(ways[n] ?? way, way) > HOLLOW_STEP_MM / allowance);
}

function fold(piece: Piece): string[] {
  if (!piece.onFold) return [];
  const beyond = [...flatten(piece.seamLine, FLAT_MM), ...flatten(piece.cutLine, FLAT_MM)].some(
    (p) => p.x < -BEYOND_FOLD_MM,
  );
  const at = piece.edges.findIndex((edge) => edge.role === 'fold');
  const folded = piece.edges[at];
  const before = piece.edges[(at + piece.edges.length - 1) % piece.edges.length];
  const after = piece.edges[(at + 1) % piece.edges.length];
  if (!folded || !before || !after) return ['has no fold edge'];
  const onLine = flatten(folded.path, FLAT_MM).every((p) => Math.abs(p.x) < BEYOND_FOLD_MM);
  const square = (path: Path, tangent: Point) =>
    POINTED.test(piece.name) || (Math.abs(Math.atan2(tangent.y, Math.abs(tangent.x))) < SQUARE && path.length > 0);
  return [
    ...(beyond ? ['lies beyond its fold'] : []),
    ...(onLine ? [] : ['its fold is not at x = 0']),
    ...(square(before.path, endTangent(before.path)) ? [] : [`edge ${before.name} does not meet the fold squarely`]),
    ...(square(after.path, startTangent(after.path)) ? [] : [`edge ${after.name} does not leave the fold squarely`]),
  ];
}

function grain(piece: Piece): string[] {
  const outline = flatten(piece.cutLine, 0.1);
  return piece.grain.every((p) => inside(p, outline)) ? [] : ['the grain line leaves the piece'];
}
