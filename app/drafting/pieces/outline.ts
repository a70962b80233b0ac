import { flatten, type Path, type Point } from '../geometry';
import type { Box } from '../packing';

/** How closely outlines are followed when laid out, mm: well under the gap between pieces. */
const FOLLOWED_MM = 0.05;

/** On the centre line, within the rounding of output, mm. */
const ON_FOLD_MM = 1e-4;

/** A closed outline as a polygon; unfolded over x = 0 where whole. */
export function outlineOf(ring: Path, whole: boolean): readonly Point[] {
  const half = flatten(ring, FOLLOWED_MM).slice(0, -1);
  return whole ? unfolded(half) : half;
}

export function cornersOf({ x, y, width, height }: Box): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** Both halves of an outline that has its fold on x = 0: down one side, back up the other. */
function unfolded(half: readonly Point[]): readonly Point[] {
  const start = half.findIndex((p, i) => onFold(p) && !onFold(half[(i + 1) % half.length]));
  if (start < 0) return half;
  const round = [...half.slice(start), ...half.slice(0, start)];
  const end = round.findIndex((p, i) => i > 0 && onFold(p));
  const side = end < 0 ? round : round.slice(0, end + 1);
  const mirrored = side.filter((p) => !onFold(p)).map((p) => ({ x: -p.x, y: p.y }));
  return [...side, ...mirrored.reverse()];
}

function onFold(p: Point | undefined): boolean {
  return p !== undefined && Math.abs(p.x) <= ON_FOLD_MM;
}
