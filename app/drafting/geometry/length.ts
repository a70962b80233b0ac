// Lengths along a curve, in mm. Adaptive Gauss–Legendre: fixed rules are 0.1–0.3 mm wrong near a cusp, chords never exact.

import { distance } from '../../body/point';
import { type Cubic, type Curve, velocity } from './curve';

/** What one halving may still change, mm: a seam of twenty curves then stays well under 1e-6 mm. */
const HALVING_MM = 1e-8;

/** Halvings at most; at a cusp the error falls fourfold with each, so 26 is far past the tolerance. */
const DEEPEST = 26;

/** Newton's steps end when the length is this near, mm. */
const PARAMETER_MM = 1e-9;

/** Positive nodes and weights of the ten-point Gauss–Legendre rule (Abramowitz & Stegun table 25.4). */
const GAUSS_LEGENDRE: readonly (readonly [node: number, weight: number])[] = [
  [0.14887433898163122, 0.29552422471475287],
  [0.4333953941292472, 0.26926671930999635],
  [0.6794095682990244, 0.21908636251598204],
  [0.8650633666889845, 0.14945134915058059],
  [0.9739065285171717, 0.06667134430868814],
];

/** Length of a whole curve, within 1e-6 mm. */
export function curveLength(curve: Curve): number {
  return lengthTo(curve, 1);
}

/** Length of the curve from its start to t, mm; t is held to [0, 1]. */
export function lengthTo(curve: Curve, t: number): number {
  const end = Math.min(Math.max(t, 0), 1);
  if (curve.kind === 'line') return distance(curve.from, curve.to) * end;
  return end === 0 ? 0 : refined(curve, 0, end, rule(curve, 0, end), DEEPEST);
}

/** The t at which the curve has run s mm from its start; 0 or 1 where s lies outside it. */
export function paramAtLength(curve: Curve, s: number): number {
  const whole = curveLength(curve);
  if (!(s > 0) || whole === 0) return 0;
  if (s >= whole) return 1;
  if (curve.kind === 'line') return s / whole;
  let low = 0;
  let high = 1;
  let t = s / whole;
  for (let step = 0; step < 60; step += 1) {
    const over = lengthTo(curve, t) - s;
    if (Math.abs(over) <= PARAMETER_MM) return t;
    if (over > 0) high = t;
    else low = t;
    const newton = t - over / speed(curve, t);
    t = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return t;
}

function refined(curve: Cubic, from: number, to: number, coarse: number, depth: number): number {
  const middle = (from + to) / 2;
  const first = rule(curve, from, middle);
  const second = rule(curve, middle, to);
  if (depth === 0 || Math.abs(first + second - coarse) <= HALVING_MM) return first + second;
  return refined(curve, from, middle, first, depth - 1) + refined(curve, middle, to, second, depth - 1);
}

function rule(curve: Cubic, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const [node, weight] of GAUSS_LEGENDRE) {
    sum += weight * (speed(curve, middle - half * node) + speed(curve, middle + half * node));
  }
  return sum * half;
}

function speed(curve: Cubic, t: number): number {
  const { x, y } = velocity(curve, t);
  return Math.sqrt(x * x + y * y);
}
