import type { Mm } from '../../body';
import {
  add,
  distanceToSegment,
  flatten,
  line,
  type Path,
  type Point,
  pathLength,
  pointAtLength,
  right,
  scale,
} from '../geometry';

/** One pleat takes in at most this much, mm; more is laid in several (common practice, no source). */
const DEEPEST_MM = 14;
/** Folds are drawn this far into the piece, mm, and never farther than this share of the way to its other edges. */
const DRAWN_MM = 14;
const DRAWN_SHARE = 0.6;
/** How closely those are followed, mm. */
const FOLLOWED_MM = 0.1;

/** A pleat on an edge: the fold is laid on its place, mm along the edge. */
export type LaidPleat = { readonly fold: Mm; readonly place: Mm };

/** Pleats that take in `full` mm of an edge `length` long, evenly spread, each folded towards the edge's start. */
export function laidPleats(length: Mm, full: Mm): LaidPleat[] {
  if (full <= 0) return [];
  const count = Math.ceil(full / DEEPEST_MM);
  const [room, takes] = [length / count, full / count];
  return Array.from({ length: count }, (_, n) => {
    const middle = (n + 0.5) * room;
    return { fold: middle + takes / 2, place: middle - takes / 2 };
  });
}

/** The two lines of each pleat, square to the edge and into the piece, short of its `others`. */
export function pleatLines(pleats: readonly LaidPleat[], edge: Path, others: readonly Path[]): Record<string, Path> {
  const rest = others.map((path) => flatten(path, FOLLOWED_MM));
  const room = (p: Point): Mm =>
    Math.min(...rest.flatMap((points) => points.slice(1).map((b, n) => distanceToSegment(p, points[n] ?? b, b))));
  const inwards = (s: Mm): Path => {
    const { point, tangent } = pointAtLength(edge, Math.min(Math.max(s, 0), pathLength(edge)));
    return [line(point, add(point, scale(right(tangent), Math.min(DRAWN_MM, room(point) * DRAWN_SHARE))))];
  };
  return Object.fromEntries(
    pleats.flatMap(({ fold, place }, n) => [
      [`fold-${n + 1}`, inwards(fold)],
      [`place-${n + 1}`, inwards(place)],
    ]),
  );
}
