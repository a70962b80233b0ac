import type { Point } from '../../app/drafting/geometry';

type Lines = readonly (readonly Point[])[];

/** Squares the plane is sorted into, mm. */
const SQUARE_MM = 5;

/** How far, at most, any of the points lies from the nearest of the lines, mm (looked for within 5 mm). */
export function farthest(points: readonly Point[], lines: Lines): number {
  const squares = sorted(lines);
  return points.reduce((most, p) => Math.max(most, nearest(p, squares)), 0);
}

type Segment = readonly [Point, Point];

function sorted(lines: Lines): ReadonlyMap<string, readonly Segment[]> {
  const squares = new Map<string, Segment[]>();
  for (const line of lines) {
    for (let i = 1; i < line.length; i += 1) {
      const [a, b] = [line[i - 1], line[i]];
      if (!a || !b) continue;
      const range = (p: number, q: number) => [
        Math.floor(Math.min(p, q) / SQUARE_MM) - 1,
        Math.floor(Math.max(p, q) / SQUARE_MM) + 1,
      ];
      const [left = 0, right = 0] = range(a.x, b.x);
      const [top = 0, bottom = 0] = range(a.y, b.y);
      for (let x = left; x <= right; x += 1)
        for (let y = top; y <= bottom; y += 1) squares.set(`${x} ${y}`, [...(squares.get(`${x} ${y}`) ?? []), [a, b]]);
    }
  }
  return squares;
}

function nearest(p: Point, squares: ReadonlyMap<string, readonly Segment[]>): number {
  const near = squares.get(`${Math.floor(p.x / SQUARE_MM)} ${Math.floor(p.y / SQUARE_MM)}`) ?? [];
  return near.reduce((least, [a, b]) => Math.min(least, away(p, a, b)), SQUARE_MM);
}

function away(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}
