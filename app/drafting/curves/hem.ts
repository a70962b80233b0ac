import { distance, end, endTangent, hermite, type Path, type Point, point } from '../geometry';

/** A hem still leaves its side square by a handle of this share of its chord: no kink. */
const LEAST_HANDLE = 0.12;
const HANDLE = 1 / 3;

/** Where the side leans in, the hem's handle rises no more than this share of its chord against a lower centre: no wave. */
const MOST_RISE = 0.03;

/**
 * From the side's end to the centre, square to both. Where the side leans out a hem that leaves it square goes down at first,
 * where it leans in, up: no farther than the centre lies, if it can.
 */
export function hemLine(side: Path, centre: Point): Path {
  const from = end(side);
  const down = endTangent(side);
  const leaving = point(-down.y, down.x);
  return [hermite(from, leaving, centre, point(-1, 0), handleOf(from, leaving.y, centre), HANDLE)];
}

function handleOf(from: Point, down: number, centre: Point): number {
  if (down === 0) return HANDLE;
  const room = (centre.y - from.y) / (down * distance(from, centre));
  const most = down < 0 ? Math.max(room, MOST_RISE / -down) : room;
  return Math.min(Math.max(most, LEAST_HANDLE), HANDLE);
}
