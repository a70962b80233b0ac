import type { Mm } from '../../body';
import { add, line, type Path, pathLength, pointAtLength, right, scale } from '../geometry';

/** One pleat takes in at most this much, mm; more is laid in several (common practice, no source). */
const DEEPEST_MM = 14;
/** Folds are drawn this far into the piece, mm, and never farther than this share of the room. */
const DRAWN_MM = 14;
const DRAWN_SHARE = 0.3;

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

/** The two lines of each pleat, square to the edge and into the piece, which is `deep` mm deep there. */
export function pleatLines(pleats: readonly LaidPleat[], edge: Path, deep: Mm): Record<string, Path> {
  const long = Math.min(DRAWN_MM, deep * DRAWN_SHARE);
  const inwards = (s: Mm): Path => {
    const { point, tangent } = pointAtLength(edge, Math.min(Math.max(s, 0), pathLength(edge)));
    return [line(point, add(point, scale(right(tangent), long)))];
  };
  return Object.fromEntries(
    pleats.flatMap(({ fold, place }, n) => [
      [`fold-${n + 1}`, inwards(fold)],
      [`place-${n + 1}`, inwards(place)],
    ]),
  );
}
