import type { Point } from '../geometry';

/** The middle of a polygon's area. It may lie outside a bent one. */
export function middleOf(polygon: readonly Point[]): Point {
  let area = 0;
  let x = 0;
  let y = 0;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const cross = a.x * b.y - b.x * a.y;
    area += cross;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  });
  return area === 0 ? (polygon[0] ?? { x: 0, y: 0 }) : { x: x / (3 * area), y: y / (3 * area) };
}
