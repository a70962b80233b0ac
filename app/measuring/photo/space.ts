import type { Point } from '../../body/point';

/** A point of a picture (px from its middle, x right, y down) or of the card's plane (mm). */
export type Spot = Point;

export type Vector = readonly [number, number, number];

export const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];
export const scale = ([x, y, z]: Vector, by: number): Vector => [x * by, y * by, z * by];
export const plus = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [a + d, b + e, c + f];
export const size = (vector: Vector): number => Math.hypot(...vector);
export const inner = ([a, b, c]: Vector, [d, e, f]: Vector): number => a * d + b * e + c * f;

/** Turns `vector` about `axis`, by the axis's length in radians (Rodrigues 1840). */
export function turned(vector: Vector, axis: Vector): Vector {
  const angle = size(axis);
  if (angle === 0) return vector;
  const unit = scale(axis, 1 / angle);
  const along = scale(unit, inner(unit, vector) * (1 - Math.cos(angle)));
  return plus(plus(scale(vector, Math.cos(angle)), scale(cross(unit, vector), Math.sin(angle))), along);
}
