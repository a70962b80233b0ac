// Straight lines and cubic Béziers, run from `from` to `to` as t goes from 0 to 1. Lengths in mm, x right, y down.
// A cubic's handles may have no length: directions then come from the next control point along.

import { add, cross, dot, lerp, norm, type Point, scale, subtract, unit } from '../../body/point';

export type Line = { readonly kind: 'line'; readonly from: Point; readonly to: Point };

/** `out` and `into` are the control points beside `from` and `to`. */
export type Cubic = {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly out: Point;
  readonly into: Point;
  readonly to: Point;
};

export type Curve = Line | Cubic;

/** A handle or speed under this share of the curve's size has no direction of its own: it is rounding. */
const NO_LENGTH_SHARE = 1e-9;

export function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}

export function cubic(from: Point, out: Point, into: Point, to: Point): Cubic {
  return { kind: 'cubic', from, out, into, to };
}

/** The point at t; the ends exactly at 0 and 1. */
export function at(curve: Curve, t: number): Point {
  if (t <= 0) return curve.from;
  if (t >= 1) return curve.to;
  if (curve.kind === 'line') return lerp(curve.from, curve.to, t);
  const s = 1 - t;
  const a = s * s * s;
  const b = 3 * s * s * t;
  const c = 3 * s * t * t;
  const d = t * t * t;
  return {
    x: a * curve.from.x + b * curve.out.x + c * curve.into.x + d * curve.to.x,
    y: a * curve.from.y + b * curve.out.y + c * curve.into.y + d * curve.to.y,
  };
}

/** The direction of travel at t, one long. At a cusp it is the direction the curve leaves in. */
export function tangent(curve: Curve, t: number): Point {
  if (curve.kind === 'line') return unit(subtract(curve.to, curve.from));
  const small = NO_LENGTH_SHARE * size(curve);
  if (t <= 0) return firstDirection(small, curve.from, curve.out, curve.into, curve.to);
  if (t >= 1) return scale(firstDirection(small, curve.to, curve.into, curve.out, curve.from), -1);
  const speed = velocity(curve, t);
  if (norm(speed) > small) return unit(speed);
  return unit(acceleration(curve, t));
}

/** Signed curvature at t, 1/mm: positive where the curve turns clockwise as seen. Infinite at a cusp. */
export function curvature(curve: Curve, t: number): number {
  if (curve.kind === 'line') return 0;
  const speed = velocity(curve, t);
  const turning = cross(speed, acceleration(curve, t));
  return turning === 0 ? 0 : turning / norm(speed) ** 3;
}

/** The two parts of a curve, before and after t (de Casteljau). */
export function split(curve: Curve, t: number): [Curve, Curve] {
  if (curve.kind === 'line') {
    const middle = at(curve, t);
    return [line(curve.from, middle), line(middle, curve.to)];
  }
  const first = lerp(curve.from, curve.out, t);
  const between = lerp(curve.out, curve.into, t);
  const last = lerp(curve.into, curve.to, t);
  const before = lerp(first, between, t);
  const after = lerp(between, last, t);
  const middle = lerp(before, after, t);
  return [cubic(curve.from, first, before, middle), cubic(middle, after, last, curve.to)];
}

/** The same curve run from its end to its start. */
export function reverse(curve: Curve): Curve {
  if (curve.kind === 'line') return line(curve.to, curve.from);
  return cubic(curve.to, curve.into, curve.out, curve.from);
}

/** The curve with every control point moved by an affine map. */
export function transformCurve(curve: Curve, f: (p: Point) => Point): Curve {
  if (curve.kind === 'line') return line(f(curve.from), f(curve.to));
  return cubic(f(curve.from), f(curve.out), f(curve.into), f(curve.to));
}

/** The derivative of a cubic at t, mm per unit of t. */
export function velocity(curve: Cubic, t: number): Point {
  const s = 1 - t;
  const a = 3 * s * s;
  const b = 6 * s * t;
  const c = 3 * t * t;
  const { from, out, into, to } = curve;
  return {
    x: a * (out.x - from.x) + b * (into.x - out.x) + c * (to.x - into.x),
    y: a * (out.y - from.y) + b * (into.y - out.y) + c * (to.y - into.y),
  };
}

function acceleration({ from, out, into, to }: Cubic, t: number): Point {
  const early = add(subtract(from, scale(out, 2)), into);
  const late = add(subtract(out, scale(into, 2)), to);
  return scale(lerp(early, late, t), 6);
}

function firstDirection(small: number, origin: Point, ...others: readonly Point[]): Point {
  for (const other of others) {
    const step = subtract(other, origin);
    if (dot(step, step) > small * small) return unit(step);
  }
  return { x: 0, y: 0 };
}

function size({ from, out, into, to }: Cubic): number {
  return norm(subtract(out, from)) + norm(subtract(into, out)) + norm(subtract(to, into));
}
