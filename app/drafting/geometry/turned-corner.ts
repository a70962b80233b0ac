// The corner between an edge that is turned back over its own line (a hem, a casing, a fold-back) and its neighbour.
// The neighbour's cut line is mirrored over the turned edge's line, so that what is turned back lies exactly on the piece.

import { add, cross, distance, dot, lerp, type Point, scale, subtract } from '../../body/point';
import { type Arm, type Corner, farthest, upTo } from './corner';
import { beginning, firstCrossing } from './meet';

/** Past 150° between neighbour and turned edge the mirrored flank would run out sideways: it is cut as if sewn. */
const FLATTEST_SINE = 0.5;

/** How far from the corner a flank may end, in greater allowances: straight edges at 150° need 4. */
const FARTHEST = 4;

/** An arm that also knows the direction that leads past its other end. */
export type LongArm = Arm & { readonly back: Point };

/**
 * Joins a neighbour's parallel to a turned edge's parallel; `first` of the answer is the neighbour.
 * The mirror is the turned edge's tangent at the corner. Undefined where there is nothing to mirror: an inner or almost
 * straight corner, or a flank that never comes down to the turned edge's own cut line.
 */
export function turnedCorner(corner: Point, neighbour: LongArm, turned: LongArm): Corner | undefined {
  const mirror = turned.beyond;
  const away = scale(neighbour.beyond, -1);
  const rising = cross(mirror, away);
  /** How far a point lies on the piece's side of the mirror. */
  const height = (p: Point): number => Math.sign(rising) * cross(mirror, subtract(p, corner));
  const [cutLine = corner] = turned.points;
  if (!(height(cutLine) < 0)) return undefined;
  if (Math.abs(rising) < FLATTEST_SINE && dot(mirror, away) > 0) return undefined;

  const far = FARTHEST * Math.max(neighbour.allowance, turned.allowance);
  const first = neighbour.points.findIndex((p) => height(p) >= 0);
  if (first < 0) return undefined;
  const tip = tipOnMirror(neighbour, first, height);
  if (distance(tip, corner) > far) return undefined;
  const limit = farthest(neighbour, turned);
  const blunt = dot(subtract(tip, corner), mirror) > limit;
  const begin = blunt ? upTo(tip, neighbour.beyond, add(corner, scale(mirror, limit)), mirror) : tip;
  const side = continued([begin, ...neighbour.points.slice(first)], neighbour.back, far);
  const flank = side.map((p) => reflected(p, corner, mirror));
  const cutChain = [add(cutLine, scale(mirror, far)), ...continued(turned.points, turned.back, far)];
  const cut = firstCrossing(flank, cutChain);
  if (!cut || distance(cut.point, corner) > far) return undefined;
  const between = [...flank.slice(0, cut.first + 1), cut.point];
  return { first, between: blunt ? [begin, ...between] : between, second: cut.second };
}

/** Where the neighbour's parallel, continued straight or trimmed, meets the mirror; `first` is its first point above it. */
function tipOnMirror(neighbour: Arm, first: number, height: (p: Point) => number): Point {
  const [from] = neighbour.points;
  const above = neighbour.points[first] ?? from;
  const below = neighbour.points[first - 1];
  if (!above) return neighbour.beyond;
  if (below) return lerp(below, above, height(below) / (height(below) - height(above)));
  const ahead = add(above, neighbour.beyond);
  return lerp(above, ahead, height(above) / (height(above) - height(ahead)));
}

/** As much of a chain as may matter within `far` mm of its start; a shorter one goes straight on past its other end. */
function continued(chain: readonly Point[], back: Point, far: number): readonly Point[] {
  const near = beginning(chain, 2 * far);
  const last = near[near.length - 1];
  return last && near.length === chain.length ? [...near, add(last, scale(back, far))] : near;
}

/** p mirrored over the line through `origin` along `direction`, one long. */
function reflected(p: Point, origin: Point, direction: Point): Point {
  const step = subtract(p, origin);
  return subtract(add(origin, scale(direction, 2 * dot(step, direction))), step);
}
