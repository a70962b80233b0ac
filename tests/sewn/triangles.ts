import { distanceToSegment, type Point } from '../../app/drafting/geometry';

/** Corners of a triangle: numbers of its points. */
export type Triangle = readonly [number, number, number];

/** Points inside keep this much of an edge's length off the outline. */
const OFF_OUTLINE = 0.6;
/** Rows of points are never quite in line, so that no four of them lie on a circle (share of an edge). */
const STIRRED = 0.03;
/** Less than this of an edge's square is no triangle. */
const LEAST_SHARE = 1e-4;

/**
 * A polygon (simple, its points about `edge` apart) filled with triangles: points in rows inside it, kept off its outline
 * and off `fixed` points, and of the triangles between all of them (Delaunay, by Bowyer and Watson) those that lie inside.
 */
export function filled(outline: readonly Point[], fixed: readonly Point[], edge: number) {
  const kept = fixed.filter((each) => awayFrom(outline, each) > 0.3 * edge && inside(outline, each));
  const rows = rowsIn(outline, edge).filter(
    (each) =>
      inside(outline, each) &&
      awayFrom(outline, each) > OFF_OUTLINE * edge &&
      kept.every((other) => Math.hypot(each.x - other.x, each.y - other.y) > OFF_OUTLINE * edge),
  );
  const points = [...outline, ...kept, ...rows];
  const least = LEAST_SHARE * edge * edge;
  const triangles = delaunay(points).filter((triangle) => {
    const [a, b, c] = corners(points, triangle);
    const middle = { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 };
    return Math.abs(turn(a, b, c)) > least && inside(outline, middle);
  });
  return { points, triangles };
}

function* grid(outline: readonly Point[], edge: number): Iterable<Point> {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const high = edge * Math.sqrt(0.75);
  let count = 0;
  for (let row = 0, y = Math.min(...ys); y <= Math.max(...ys); y += high, row++)
    for (let x = Math.min(...xs) + (row % 2) * (edge / 2); x <= Math.max(...xs); x += edge, count++)
      yield { x: x + STIRRED * edge * Math.sin(7.1 * count), y: y + STIRRED * edge * Math.sin(3.7 * count + 1) };
}
const rowsIn = (outline: readonly Point[], edge: number) => [...grid(outline, edge)];

function awayFrom(outline: readonly Point[], p: Point): number {
  return outline.reduce((least, a, n) => {
    const b = outline[(n + 1) % outline.length] ?? a;
    return Math.min(least, distanceToSegment(p, a, b));
  }, Number.POSITIVE_INFINITY);
}

export function inside(outline: readonly Point[], p: Point): boolean {
  let within = false;
  outline.forEach((a, n) => {
    const b = outline[(n + 1) % outline.length] ?? a;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) within = !within;
  });
  return within;
}

const turn = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

function corners(points: readonly Point[], [a, b, c]: Triangle): [Point, Point, Point] {
  const none = { x: 0, y: 0 };
  return [points[a] ?? none, points[b] ?? none, points[c] ?? none];
}

function delaunay(points: readonly Point[]): Triangle[] {
  const far = 1e3 * Math.max(...points.map(({ x, y }) => Math.abs(x) + Math.abs(y)), 1);
  const all = [...points, { x: -far, y: -far }, { x: far, y: -far }, { x: 0, y: far }];
  const count = points.length;
  let found: { readonly of: Triangle; readonly x: number; readonly y: number; readonly far: number }[] = [];
  const add = (of: Triangle) => found.push({ of, ...round(corners(all, of)) });
  add([count, count + 1, count + 2]);
  points.forEach((p, n) => {
    const edges = new Map<string, readonly [number, number]>();
    found = found.filter(({ of, x, y, far: radius }) => {
      if ((p.x - x) ** 2 + (p.y - y) ** 2 >= radius) return true;
      for (const k of [0, 1, 2]) {
        const [a, b] = [of[k] ?? 0, of[(k + 1) % 3] ?? 0];
        if (!edges.delete(`${b} ${a}`)) edges.set(`${a} ${b}`, [a, b]);
      }
      return false;
    });
    for (const [a, b] of edges.values()) add([a, b, n]);
  });
  return found.map(({ of }) => of).filter((of) => of.every((n) => n < count));
}

/** The circle through three points; `far` is its radius squared. */
function round([a, b, c]: readonly [Point, Point, Point]) {
  const twice = 2 * turn(a, b, c);
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice];
  return { x: a.x + x, y: a.y + y, far: x * x + y * y };
}
