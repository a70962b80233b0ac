// Solving for one number: bracketed, so that it cannot wander, and with a stated failure where there is no answer.

import { type Path, pathLength } from './path';

export type Solution =
  | { readonly ok: true; readonly x: number; readonly evaluations: number }
  | {
      readonly ok: false;
      /** `no-bracket`: no sign change between the ends, or a jump over zero. */
      readonly reason: 'no-bracket' | 'not-finite';
      readonly atLow: number;
      readonly atHigh: number;
    };

/** How near a drawn length comes to the one asked for, mm: a fiftieth of what a sewn seam may be off. */
export const SOLVED_LENGTH_MM = 0.001;

const MOST_EVALUATIONS = 100;

/**
 * The x in [lo, hi] where |f(x)| ≤ tolerance (in f's own unit), by Brent's method: R. P. Brent, Algorithms for
 * Minimization without Derivatives, 1973, chapter 4. f must have opposite signs at the ends, or be within tolerance at one.
 */
export function brent(
  f: (x: number) => number,
  lo: number,
  hi: number,
  options: { readonly tolerance: number; readonly maxEvaluations?: number },
): Solution {
  const { tolerance, maxEvaluations = MOST_EVALUATIONS } = options;
  const atLow = f(lo);
  const atHigh = f(hi);
  const failed = (reason: 'no-bracket' | 'not-finite'): Solution => ({ ok: false, reason, atLow, atHigh });
  if (!Number.isFinite(atLow) || !Number.isFinite(atHigh)) return failed('not-finite');
  if (Math.abs(atLow) <= tolerance) return { ok: true, x: lo, evaluations: 2 };
  if (Math.abs(atHigh) <= tolerance) return { ok: true, x: hi, evaluations: 2 };
  if (Math.sign(atLow) === Math.sign(atHigh)) return failed('no-bracket');

  // b is the best guess, c the other end of the bracket, a the guess before b.
  let [a, fa, b, fb] = [lo, atLow, hi, atHigh];
  let [c, fc] = [a, fa];
  let step = b - a;
  let before = step;
  for (let evaluations = 2; evaluations < maxEvaluations; evaluations += 1) {
    if (Math.sign(fb) === Math.sign(fc)) {
      [c, fc] = [a, fa];
      step = b - a;
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) [a, fa, b, fb, c, fc] = [b, fb, c, fc, b, fb];
    if (Math.abs(fb) <= tolerance) return { ok: true, x: b, evaluations };
    const least = 2 * Number.EPSILON * Math.abs(b) + Number.MIN_VALUE;
    const half = (c - b) / 2;
    if (Math.abs(half) <= least) return failed('no-bracket');
    const tried = interpolated(a, fa, b, fb, c, fc);
    const useful = Math.abs(tried) < Math.min(Math.abs(1.5 * half) - least / 2, Math.abs(before / 2));
    const inward = Math.sign(tried) === Math.sign(half);
    [before, step] = useful && inward && Math.abs(before) >= least ? [step, tried] : [half, half];
    [a, fa] = [b, fb];
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = f(b);
    if (!Number.isFinite(fb)) return failed('not-finite');
  }
  return Math.abs(fb) <= tolerance ? { ok: true, x: b, evaluations: maxEvaluations } : failed('no-bracket');
}

/** The x in [lo, hi] for which the drawn path is `length` mm long, within 0.001 mm. */
export function solveLength(draw: (x: number) => Path, length: number, lo: number, hi: number): Solution {
  return brent((x) => pathLength(draw(x)) - length, lo, hi, { tolerance: SOLVED_LENGTH_MM });
}

/** Brent's step from b: a secant while two points are known, inverse quadratic with three. */
function interpolated(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const s = fb / fa;
  const half = (c - b) / 2;
  if (a === c) return (2 * half * s) / (s - 1) || 0;
  const q = fa / fc;
  const r = fb / fc;
  const p = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1)) || 0;
}
