import type { Piece } from '../draft-types';
import { distanceToSegment, flatten, lerp, type Point, ringIsSimple, signedArea } from '../geometry';

/** A line may end on an edge, or lie on one: rounding only, mm. */
const ON_EDGE_MM = 0.02;
/** How closely a line is followed, mm. */
const FOLLOWED_MM = 0.5;

/** Nothing is sewn to an edge shorter than a pencil line is wide, mm (common practice, no source). */
const LEAST_EDGE_MM = 0.6;

/**
 * Whether a piece can be cut at all: its seam line never runs over itself, no edge of it is a mere dot, and what is drawn in it
 * stays in it. Bodies that no toy
 * has can ask for others, in more ways than rules about their numbers could name.
 */
export function isCuttable({ edges, seamLine, lines }: Piece): boolean {
  if (edges.some(({ length }) => length < LEAST_EDGE_MM)) return false;
  if (!(signedArea(seamLine) > 0) || !ringIsSimple(seamLine)) return false;
  if (lines.length === 0) return true;
  const ring = flatten(seamLine, ON_EDGE_MM / 4);
  return lines.every(({ path }) => alongOf(flatten(path, FOLLOWED_MM)).every((p) => isWithin(p, ring)));
}

/** Its points, and the middles between them: a straight line has only two ends. */
const alongOf = (points: readonly Point[]): Point[] =>
  points.flatMap((to, index) => [to, lerp(points[index - 1] ?? to, to, 1 / 2)]);

/** Inside an outline (even-odd), or on it. */
function isWithin(p: Point, ring: readonly Point[]): boolean {
  let within = false;
  for (const [index, from] of ring.entries()) {
    const to = ring[(index + 1) % ring.length] ?? from;
    if (from.y > p.y !== to.y > p.y && p.x < from.x + ((to.x - from.x) * (p.y - from.y)) / (to.y - from.y))
      within = !within;
  }
  if (within) return true;
  return ring.some((from, index) => distanceToSegment(p, from, ring[(index + 1) % ring.length] ?? from) < ON_EDGE_MM);
}
