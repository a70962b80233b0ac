import { ellipseQuarter, type Path, point } from '../geometry';

/**
 * Half a neckline, from the centre line to the neck end of the shoulder: square to both, a quarter of an ellipse
 * aslant. `halfWidth` and `drop` in mm; `slope` is the shoulder's, radians down from level.
 */
export function neckline(halfWidth: number, drop: number, slope: number): Path {
  return [ellipseQuarter(point(0, drop), point(1, 0), point(halfWidth, 0), point(Math.sin(slope), -Math.cos(slope)))];
}
