import {
  add,
  type CutEdge,
  distance,
  flatten,
  left,
  lerp,
  type Path,
  type Point,
  pathLength,
  pointAtLength,
  scale,
} from '../../app/drafting/geometry';

/** How closely these measures follow a curve, mm: far finer than anything they are asked to judge. */
const FOLLOWED_MM = 0.001;

/** How far any point of `inner` lies outside the polygon `ring`, mm. */
export function outsideBy(inner: Path, ring: readonly Point[]): number {
  return greatest(flatten(inner, FOLLOWED_MM).map((p) => (within(p, ring) ? 0 : toRing(p, ring))));
}

/** How much nearer than `allowance` mm a ring comes to the seam line anywhere. */
export function tooNear(ring: readonly Point[], seam: Path, allowance: number): number {
  const line = flatten(seam, FOLLOWED_MM);
  const places = ring.flatMap((p, i) => [p, lerp(p, ring[(i + 1) % ring.length] ?? p, 0.5)]);
  return greatest(places.map((p) => allowance - toLine(p, line)));
}

/**
 * How far the ring strays from the edges' true parallels, mm, at `places` places an edge. Left out are places another
 * edge comes nearer to, and places within reach of the mitre of a corner: `reach` mm.
 */
export function strays(ring: readonly Point[], edges: readonly CutEdge[], places: number, reach: number): number {
  const lines = edges.map((edge) => flatten(edge.path, FOLLOWED_MM));
  const corners = edges.map((edge) => pointAtLength(edge.path, 0).point);
  const misses = edges.flatMap((edge, own) =>
    stations(edge.path, places).map(({ point, tangent }) => {
      const place = add(point, scale(left(tangent), edge.allowance));
      const covered = edges.some(
        (other, i) => toLine(place, lines[i] ?? []) < other.allowance - (i === own ? 0.01 : 0),
      );
      const mitred = corners.some((corner) => distance(corner, place) < reach);
      return covered || mitred ? 0 : toRing(place, ring);
    }),
  );
  return greatest(misses);
}

/** The greatest distance from a point of one polygon to the other, either way, sides included. */
export function apart(one: readonly Point[], other: readonly Point[]): number {
  const oneWay = (a: readonly Point[], b: readonly Point[]): number =>
    greatest(a.flatMap((p, i) => [p, lerp(p, a[(i + 1) % a.length] ?? p, 0.5)]).map((p) => toRing(p, b)));
  return Math.max(oneWay(one, other), oneWay(other, one));
}

/** Whether p is inside the polygon (even–odd). */
export function within(p: Point, ring: readonly Point[]): boolean {
  let inside = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  });
  return inside;
}

/** From p to the nearest place on a closed polygon, mm. */
export function toRing(p: Point, ring: readonly Point[]): number {
  return toLine(p, [...ring, ...ring.slice(0, 1)]);
}

/** From p to the nearest place on an open chain of points, mm. */
export function toLine(p: Point, line: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  let a = line[0] ?? p;
  for (const b of line) {
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const square = dx * dx + dy * dy;
    const share = square > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : 0;
    const t = Math.min(Math.max(share, 0), 1);
    const [x, y] = [a.x + t * dx - p.x, a.y + t * dy - p.y];
    const off = x * x + y * y;
    if (off < least) least = off;
    a = b;
  }
  return Math.sqrt(least);
}

function stations(path: Path, places: number): ReturnType<typeof pointAtLength>[] {
  const whole = pathLength(path);
  return Array.from({ length: places + 1 }, (_, i) => pointAtLength(path, (whole * i) / places));
}

function greatest(numbers: readonly number[]): number {
  return numbers.reduce((most, n) => Math.max(most, n), 0);
}
