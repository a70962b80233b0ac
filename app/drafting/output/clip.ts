// What of a drawing lies inside a box: tiles show only their window, exactly.

import { flatten, type Path, type Point, polyline } from '../geometry';
import type { Box } from '../packing';
import { type Ink, MM_PER_PT, type TextWidth } from './ink';

/** How closely curves are followed where they are cut off, mm: well under what print may be off by. */
const FOLLOWED_MM = 0.004;

/** Ink inside the box: lines cut off at its edge, words that reach over it left out. */
export function clippedInk(ink: readonly Ink[], box: Box, widthOf: TextWidth): readonly Ink[] {
  return ink.flatMap((each): readonly Ink[] => {
    if (each.kind === 'words') {
      const length = widthOf(each.text, each.size, each.bold);
      const ends = [
        each.at,
        { x: each.at.x + Math.cos(each.turn) * length, y: each.at.y + Math.sin(each.turn) * length },
      ];
      const margin = each.size * MM_PER_PT;
      return ends.every((p) => contains(box, p, margin)) ? [each] : [];
    }
    if (flatten(each.path, 1).every((p) => contains(box, p, 1))) return [each];
    if (each.kind === 'fill')
      return [{ ...each, path: polyline(clippedPolygon(flatten(each.path, FOLLOWED_MM), box)) }];
    return clippedLine(flatten(each.path, FOLLOWED_MM), box).map((path) => ({ ...each, path, closed: false }));
  });
}

/** The parts of a line of chords inside the box, each as a path. */
export function clippedLine(points: readonly Point[], box: Box): readonly Path[] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1], points[i]];
    const kept = a && b && clippedSegment(a, b, box);
    if (!kept || !a) {
      part = [];
      continue;
    }
    const [from, to] = kept;
    const goesOn = part.length > 0 && from.x === a.x && from.y === a.y;
    if (!goesOn) {
      part = [from];
      parts.push(part);
    }
    part.push(to);
  }
  return parts.map(polyline).filter((path) => path.length > 0);
}

/** A polygon cut to the box (Sutherland and Hodgman, 1974): good for filling; its edges may run along the box's. */
export function clippedPolygon(polygon: readonly Point[], { x, y, width, height }: Box): readonly Point[] {
  const sides: readonly ((p: Point) => number)[] = [
    (p) => p.x - x,
    (p) => x + width - p.x,
    (p) => p.y - y,
    (p) => y + height - p.y,
  ];
  return sides.reduce(cutBy, polygon);
}

function cutBy(polygon: readonly Point[], inside: (p: Point) => number): readonly Point[] {
  return polygon.flatMap((b, i) => {
    const a = polygon[(i + polygon.length - 1) % polygon.length] ?? b;
    const [da, db] = [inside(a), inside(b)];
    const t = da / (da - db);
    const crossing = da >= 0 === db >= 0 ? [] : [{ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }];
    return db >= 0 ? [...crossing, b] : crossing;
  });
}

/** Liang and Barsky, 1984. */
function clippedSegment(a: Point, b: Point, box: Box): readonly [Point, Point] | undefined {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let first = 0;
  let last = 1;
  const bounds: readonly (readonly [number, number])[] = [
    [-dx, a.x - box.x],
    [dx, box.x + box.width - a.x],
    [-dy, a.y - box.y],
    [dy, box.y + box.height - a.y],
  ];
  for (const [rate, room] of bounds) {
    if (rate === 0 && room < 0) return undefined;
    if (rate < 0) first = Math.max(first, room / rate);
    if (rate > 0) last = Math.min(last, room / rate);
  }
  if (first > last) return undefined;
  const at = (t: number): Point => ({ x: a.x + dx * t, y: a.y + dy * t });
  return [first === 0 ? a : at(first), last === 1 ? b : at(last)];
}

function contains({ x, y, width, height }: Box, p: Point, margin: number): boolean {
  return p.x >= x + margin && p.x <= x + width - margin && p.y >= y + margin && p.y <= y + height - margin;
}
