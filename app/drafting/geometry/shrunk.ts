import { Clipper, EndType, JoinType } from 'clipper2-ts';
import type { Point } from '../../body/point';

/** Whole steps the outline is counted in, per mm. */
const STEPS_PER_MM = 1e4;

/** Inner corners stay as far from the outline as twice this at most; pointed ones are cut square. */
const MITRE = 2;

/**
 * What of the area in a simple outline is farther than `by` mm from it: the largest part where it falls into several,
 * nothing where none is left. Runs the way the outline does not matter.
 */
export function shrunk(outline: readonly Point[], by: number): readonly Point[] {
  const path = outline.map(({ x, y }) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) }));
  const ring = Clipper.isPositive(path) ? path : Clipper.reversePath(path);
  const parts = Clipper.inflatePaths([ring], -by * STEPS_PER_MM, JoinType.Miter, EndType.Polygon, MITRE);
  const areas = parts.map((part) => Clipper.area(part));
  const largest = parts[areas.indexOf(Math.max(...areas))] ?? [];
  return largest.map(({ x, y }) => ({ x: x / STEPS_PER_MM, y: y / STEPS_PER_MM }));
}
