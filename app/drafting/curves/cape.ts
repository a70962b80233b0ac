import { add, cubic, end, endTangent, type Path, type Point, point, scale } from '../geometry';

/** A bow fuller than a quarter of an ellipse, whose handles are 0.55 of its way: it lies over the flanks, too (common practice, no source). */
const FULL = 0.66;

/** A hem from the foot of a front, square to it, to the fold behind, `back` mm under the neck and square to that. */
export function backSweep(side: Path, back: number): Path {
  const [foot, way] = [end(side), endTangent(side)];
  const middle = point(0, back);
  const square = point(-way.y, way.x);
  // Where the way square to the front comes to the level of the fold's end.
  const down = (back - foot.y) / square.y;
  const corner = add(foot, scale(square, down));
  return [cubic(foot, towards(foot, corner), towards(middle, corner), middle)];
}

const towards = (from: Point, to: Point): Point =>
  point(from.x + FULL * (to.x - from.x), from.y + FULL * (to.y - from.y));
