// The smallest upright box round a curve or a path: exact, from the turning points of the curve, not its handles.

import { at, type Curve } from './curve';
import type { Path } from './path';

/** Edges of a box in mm; y grows downwards, so top ≤ bottom. */
export type Bounds = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** A leading coefficient under this share of the others is rounding: the curve is one degree lower. */
const VANISHING_SHARE = 1e-12;

export function bounds(curve: Curve): Bounds {
  const stops =
    curve.kind === 'line'
      ? []
      : [
          ...turningPoints(curve.from.x, curve.out.x, curve.into.x, curve.to.x),
          ...turningPoints(curve.from.y, curve.out.y, curve.into.y, curve.to.y),
        ];
  const points = [curve.from, curve.to, ...stops.map((t) => at(curve, t))];
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** The box round a whole path. An empty path has the empty box: left and top at infinity. */
export function pathBounds(path: Path): Bounds {
  const empty = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  return path.reduce((box, curve) => joined(box, bounds(curve)), empty);
}

function joined(a: Bounds, b: Bounds): Bounds {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** The t inside (0, 1) where one coordinate of a cubic stands still. */
function turningPoints(p0: number, p1: number, p2: number, p3: number): readonly number[] {
  const c = p1 - p0;
  const b = 2 * (p2 - 2 * p1 + p0);
  const a = p3 - 3 * p2 + 3 * p1 - p0;
  return quadraticRoots(a, b, c).filter((t) => t > 0 && t < 1);
}

function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  if (Math.abs(a) <= VANISHING_SHARE * (Math.abs(b) + Math.abs(c))) return b === 0 ? [] : [-c / b];
  const discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return [];
  // The root that adds like signs first, the other from the product: neither loses digits.
  const q = -(b + Math.sign(b || 1) * Math.sqrt(discriminant)) / 2;
  return q === 0 ? [0] : [q / a, c / q];
}
