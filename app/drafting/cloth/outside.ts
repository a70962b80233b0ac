import type { Point } from '../geometry';
import type { Ring } from '../packing';

/** Slivers of less area are only rounding, mm². */
const SLIVER_MM2 = 1e-6;

/** What lies within the box round a simple outline but not within the outline: as trapezoids, level band by level band. */
export function outsideOf(outline: Ring): readonly Ring[] {
  const left = Math.min(...outline.map((p) => p.x));
  const right = Math.max(...outline.map((p) => p.x));
  const levels = [...new Set(outline.map((p) => p.y))].sort((a, b) => a - b);
  return levels.slice(1).flatMap((bottom, index) => {
    const top = levels[index] ?? bottom;
    const sides = [wall(left), ...sidesWithin(outline, top, bottom), wall(right)];
    return sides.flatMap((one, at): Ring[] => {
      const other = sides[at + 1];
      if (at % 2 === 1 || !other) return [];
      const ring = [
        { x: one(top), y: top },
        { x: other(top), y: top },
        { x: other(bottom), y: bottom },
        { x: one(bottom), y: bottom },
      ];
      const area = ((other(top) - one(top) + other(bottom) - one(bottom)) * (bottom - top)) / 2;
      return area > SLIVER_MM2 ? [ring] : [];
    });
  });
}

type Side = (y: number) => number;

const wall =
  (x: number): Side =>
  () =>
    x;

/** The outline's edges that cross the whole band, from left to right. */
function sidesWithin(outline: Ring, top: number, bottom: number): readonly Side[] {
  const middle = (top + bottom) / 2;
  const crossing = outline.flatMap((a, index): Side[] => {
    const b = outline[(index + 1) % outline.length] as Point;
    if (a.y < middle === b.y < middle) return [];
    return [(y) => a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
  });
  return crossing.sort((a, b) => a(middle) - b(middle));
}
