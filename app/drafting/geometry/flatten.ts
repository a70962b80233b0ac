// Curves as chords, for what only understands polygons: never for lengths.

import { dot, norm, type Point, scale, subtract } from '../../body/point';
import { at, type Cubic, type Curve, split } from './curve';
import type { Path } from './path';

/** A cubic strays from its chord by at most this share of how far its farther control point does (Bernstein weights). */
const HULL_SHARE = 3 / 4;

/** Halvings of one curve at most. */
const DEEPEST = 16;

/**
 * Points along the path, both ends included, whose chords stray at most `tolerance` mm from it.
 * A ring's first point comes again at its end.
 */
export function flatten(path: Path, tolerance: number): Point[] {
  const points: Point[] = [];
  for (const curve of path) {
    if (points.length === 0) points.push(curve.from);
    addChords(curve, tolerance, DEEPEST, points);
  }
  return points;
}

function addChords(curve: Curve, tolerance: number, depth: number, points: Point[]): void {
  if (curve.kind === 'line' || depth === 0 || strays(curve) * HULL_SHARE <= tolerance) {
    points.push(at(curve, 1));
    return;
  }
  const [before, after] = split(curve, 0.5);
  addChords(before, tolerance, depth - 1, points);
  addChords(after, tolerance, depth - 1, points);
}

function strays({ from, out, into, to }: Cubic): number {
  return Math.max(distanceToSegment(out, from, to), distanceToSegment(into, from, to));
}

/** From p to the nearest point of the straight piece between a and b, mm. */
export function distanceToSegment(p: Point, a: Point, b: Point): number {
  const along = subtract(b, a);
  const away = subtract(p, a);
  const square = dot(along, along);
  const share = square > 0 ? Math.min(Math.max(dot(away, along) / square, 0), 1) : 0;
  return norm(subtract(away, scale(along, share)));
}
