// Corners of a cut line between edges that are simply sewn, or that end on a fold.

import { add, cross, distance, dot, norm, type Point, scale, subtract, unit } from '../../body/point';
import { beginning, firstCrossing, lineMeet } from './meet';

/** One parallel as seen from a corner: its points going away from it, and the direction that leads past the corner. */
export type Arm = {
  readonly points: readonly Point[];
  readonly beyond: Point;
  readonly allowance: number;
};

/** How two arms are joined: the first point kept of each, and the points put between, from the first arm to the second. */
export type Corner = {
  readonly first: number;
  readonly between: readonly Point[];
  readonly second: number;
};

/** A mitre's tip may be this many (greater) allowances from the corner; past that it is cut square. Common practice. */
export const MITRE_LIMIT = 2;

/** Ends nearer than this are joined where they are, mm: an angle that small is drawing, not design. */
const JOINED_MM = 0.002;

/** A parallel this little over the fold line is on it, mm. */
const ON_FOLD_MM = 0.0002;

/** Parallels round an inner corner are searched this far, in units of what straight ones would need, and at least this, mm. */
const SEARCHED_SHARE = 3;
const SEARCHED_MM = 2;

/**
 * Joins the parallel that arrives at `corner` to the one that leaves it; the outside is on the left.
 * Outer corners are mitred from the end tangents, inner ones cut where the parallels cross. Where allowances differ so
 * much that a mitre would cut into the wider one, the cut steps along the wider one's normal instead.
 */
export function plainCorner(corner: Point, arriving: Arm, leaving: Arm): Corner {
  const [a = corner] = arriving.points;
  const [b = corner] = leaving.points;
  if (distance(a, b) <= JOINED_MM) return { first: 1, between: [scale(add(a, b), 0.5)], second: 1 };
  const lines = lineMeet(a, arriving.beyond, b, leaving.beyond);
  const opens = cross(leaving.beyond, arriving.beyond) > 0;
  if (!lines) return dot(arriving.beyond, leaving.beyond) > 0 ? squared(corner, arriving, leaving) : joined;
  if (opens) {
    if (lines.s < 0) return stepped(corner, arriving, leaving);
    if (lines.t < 0) return turned(stepped(corner, leaving, arriving));
    const tip = add(a, scale(arriving.beyond, lines.s));
    if (distance(corner, tip) > farthest(arriving, leaving)) return squared(corner, arriving, leaving);
    return { first: 0, between: [tip], second: 0 };
  }
  if (lines.s > 0) return stepped(corner, arriving, leaving);
  if (lines.t > 0) return turned(stepped(corner, leaving, arriving));
  const reach = SEARCHED_SHARE * Math.max(-lines.s, -lines.t) + SEARCHED_MM;
  const crossing = firstCrossing(beginning(arriving.points, reach), beginning(leaving.points, reach));
  return crossing
    ? {
        first: crossing.first + 1,
        between: [crossing.point],
        second: crossing.second + 1,
      }
    : pinned(corner);
}

/**
 * Joins a parallel to the fold it ends on: it runs straight out to the fold line, or is trimmed there, as half of the
 * corner it makes with its own mirror image.
 */
export function foldCorner(corner: Point, arm: Arm, fold: Arm): Corner {
  if (arm.allowance === 0) return joined;
  const [from = corner] = arm.points;
  const outward = fold.beyond;
  // How far inside the fold line a point lies.
  const inward = cross(outward, arm.beyond) > 0 ? -1 : 1;
  const inside = (p: Point): number => inward * cross(outward, subtract(p, corner));
  // A hollow tighter than its allowance folds its parallel back over the line some way along, not only at its end.
  const first = arm.points.findLastIndex((p) => inside(p) < -ON_FOLD_MM) + 1;
  const [p, q] = [arm.points[first - 1], arm.points[first]];
  const trimmed = p && q && lineMeet(p, subtract(q, p), corner, outward);
  if (trimmed) return { first, between: [add(corner, scale(outward, trimmed.t))], second: 0 };
  const meet = lineMeet(from, arm.beyond, corner, outward);
  if (!meet) return joined;
  const limit = MITRE_LIMIT * arm.allowance;
  if (meet.t <= limit) return { first: 0, between: [add(corner, scale(outward, meet.t))], second: 0 };
  const tip = add(corner, scale(outward, limit));
  return {
    first: 0,
    between: [upTo(from, arm.beyond, tip, outward), tip],
    second: 0,
  };
}

/** The same corner seen from its other arm. */
export function turned(corner: Corner): Corner {
  return {
    first: corner.second,
    between: [...corner.between].reverse(),
    second: corner.first,
  };
}

/** How far from a corner its mitre may reach, mm. */
export function farthest(one: Arm, other: Arm): number {
  return MITRE_LIMIT * Math.max(one.allowance, other.allowance);
}

/** Ends joined straight across, trimming neither. */
const joined: Corner = { first: 0, between: [], second: 0 };

/** Ends joined by way of the corner: each edge keeps its whole strip, and the union of the strips is left to `united`. */
function pinned(corner: Point): Corner {
  return { first: 0, between: [corner], second: 0 };
}

/** A mitre cut off square to the line from the corner to its tip. */
function squared(corner: Point, arriving: Arm, leaving: Arm): Corner {
  const [a = corner] = arriving.points;
  const [b = corner] = leaving.points;
  const meet = lineMeet(a, arriving.beyond, b, leaving.beyond);
  const tip = meet ? subtract(add(a, scale(arriving.beyond, meet.s)), corner) : add(arriving.beyond, leaving.beyond);
  const axis = unit(tip);
  const edge = add(corner, scale(axis, farthest(arriving, leaving)));
  const between = [upTo(a, arriving.beyond, edge, axis), upTo(b, leaving.beyond, edge, axis)];
  return { first: 0, between, second: 0 };
}

/** From p along a direction up to the line through `edge` square to `axis`. */
export function upTo(p: Point, direction: Point, edge: Point, axis: Point): Point {
  return add(p, scale(direction, dot(subtract(edge, p), axis) / dot(direction, axis)));
}

/** The wider arm keeps its whole length; the other runs to the normal at the wider one's end, and the cut steps along it. */
function stepped(corner: Point, wide: Arm, narrow: Arm): Corner {
  const [top = corner] = wide.points;
  const [from = corner] = narrow.points;
  if (narrow.allowance === 0) return { first: 0, between: [], second: 0 };
  const normal = subtract(top, corner);
  const ahead = lineMeet(from, narrow.beyond, corner, unit(normal));
  if (!ahead || ahead.t > norm(normal)) return pinned(corner);
  if (ahead.s >= 0)
    return {
      first: 0,
      between: [add(from, scale(narrow.beyond, ahead.s))],
      second: 0,
    };
  const crossing = firstCrossing([top, corner], beginning(narrow.points, SEARCHED_SHARE * -ahead.s + SEARCHED_MM));
  return crossing ? { first: 0, between: [crossing.point], second: crossing.second + 1 } : pinned(corner);
}
