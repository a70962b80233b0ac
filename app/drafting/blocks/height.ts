import { end, flatten, type Path } from '../geometry';

/** How closely a curve is followed, mm. */
const FLAT_MM = 0.2;

/** How high a path lies at x, y down, where it comes there first; its last point where it does not come so far. */
export function heightAt(path: Path, x: number): number {
  const points = flatten(path, FLAT_MM);
  for (const [index, to] of points.entries()) {
    const from = points[index - 1] ?? to;
    if (from.x <= x !== to.x <= x) return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
  }
  return end(path).y;
}
