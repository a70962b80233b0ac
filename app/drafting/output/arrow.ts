import { add, type Path, type Point, polyline, rotate, scale } from '../geometry';

/** Length of a head's strokes, mm, and how far they spread from the shaft, radians. */
const HEAD_MM = 2.6;
const SPREAD = 0.42;

/** Two strokes that meet at the tip of an arrow pointing along a direction one long. */
export function arrowHead(tip: Point, direction: Point): Path {
  const back = scale(direction, -HEAD_MM);
  return polyline([add(tip, rotate(back, SPREAD)), tip, add(tip, rotate(back, -SPREAD))]);
}
