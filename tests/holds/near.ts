import { distance, type Point, scale } from '../../app/drafting/geometry';

/** Whether a point lies inside a closed outline (even-odd). */
export function inside(p: Point, outline: readonly Point[]): boolean {
  let within = false;
  outline.forEach((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    if (from.y > p.y !== to.y > p.y && p.x < from.x + ((to.x - from.x) * (p.y - from.y)) / (to.y - from.y))
      within = !within;
  });
  return within;
}

/** From a point to the nearest of a closed outline, mm. */
export function toRing(p: Point, outline: readonly Point[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  outline.forEach((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    nearest = Math.min(nearest, toSegment(p, from, to));
  });
  return nearest;
}

/** From a point to the nearest of an open line, mm. */
export function toChain(p: Point, chain: readonly Point[]): number {
  return chain
    .slice(1)
    .reduce((nearest, to, index) => Math.min(nearest, toSegment(p, chain[index] ?? to, to)), Number.POSITIVE_INFINITY);
}

function toSegment(p: Point, from: Point, to: Point): number {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const square = way.x * way.x + way.y * way.y;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - from.x) * way.x + (p.y - from.y) * way.y) / square));
  return distance(p, { x: from.x + scale(way, t).x, y: from.y + scale(way, t).y });
}
