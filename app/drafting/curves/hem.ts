import { distance, end, endTangent, hermite, type Path, type Point, point } from '../geometry';

/** A hem still leaves its side square by a handle of this share of its chord: no kink. */
const LEAST_HANDLE = 0.12;
const HANDLE = 1 / 3;

/**
 * From the side's end to the centre, square to both. Where the side leans out a hem that leaves it square goes down at first: no
 * farther than the centre lies, if it can.
 */
export function hemLine(side: Path, centre: Point): Path {
  const from = end(side);
  const down = endTangent(side);
  const leaving = point(-down.y, down.x);
  const room = (centre.y - from.y) / (leaving.y * distance(from, centre));
  const out = leaving.y > 0 ? Math.min(Math.max(room, LEAST_HANDLE), HANDLE) : HANDLE;
  return [hermite(from, leaving, centre, point(-1, 0), out, HANDLE)];
}
