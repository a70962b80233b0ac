import { solveLinear } from './linear';
import type { Spot } from './space';
import { moved, seenAt, type View } from './view';

/** What is known of a photograph before anything is tapped. */
export type Prior = {
  /** Usual focal length, px, and how far cameras differ from it (log scale). */
  readonly focal: number;
  readonly focalSpread: number;
  /** How far the card usually leans from facing the camera (sine of the angle). */
  readonly leanSpread: number;
  /** How far a tap misses, px. */
  readonly tap: number;
};

/** A view fitted to taps: `cost` is the square of how badly it fits, `hold` how firmly its seven numbers are held. */
export type Fit = { readonly view: View; readonly cost: number; readonly hold: readonly (readonly number[])[] };

const MOST_ROUNDS = 30;
const SETTLED = 1e-9;

/**
 * The view near `start` under which the taps are likeliest (Levenberg 1944, Marquardt 1963): four taps say eight
 * numbers, a view has seven, and the prior holds those that taps say little of.
 */
export function fitView(start: View, plane: readonly Spot[], taps: readonly Spot[], prior: Prior): Fit {
  let view = start;
  let misses = missesOf(view, plane, taps, prior);
  let damping = 1e-3;
  for (let round = 0; round < MOST_ROUNDS && damping < 1e9; round++) {
    const slopes = slopesOf((each) => missesOf(each, plane, taps, prior), view);
    const hold = productOf(slopes);
    const pull = slopes.map((slope) => -total(slope, misses));
    const step = solveLinear(
      hold.map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value))),
      pull,
    );
    if (!step) break;
    const tried = stepped(view, step);
    const missed = missesOf(tried, plane, taps, prior);
    const gain = total(misses, misses) - total(missed, missed);
    if (gain > 0) {
      [view, misses, damping] = [tried, missed, damping / 5];
      if (gain < SETTLED) break;
    } else damping *= 10;
  }
  const slopes = slopesOf((each) => missesOf(each, plane, taps, prior), view);
  return { view, cost: total(misses, misses), hold: productOf(slopes) };
}

/** How a number read off a view changes with each of the view's seven numbers. */
export function slopesOf(read: (view: View) => readonly number[], view: View): readonly (readonly number[])[] {
  return NUDGES.map((nudge, k) => {
    const step = NUDGES.map((_, i) => (i === k ? nudge : 0));
    const [after, before] = [
      read(stepped(view, step)),
      read(
        stepped(
          view,
          step.map((each) => -each),
        ),
      ),
    ];
    return after.map((value, i) => (value - (before[i] ?? 0)) / (2 * nudge));
  });
}

/** Turn about three axes (radians), three shifts (mm), zoom (log): small enough for slopes, large enough for their digits. */
const NUDGES = [1e-5, 1e-5, 1e-5, 1e-3, 1e-3, 1e-3, 1e-5];

function stepped(view: View, [a = 0, b = 0, c = 0, x = 0, y = 0, z = 0, zoom = 0]: readonly number[]): View {
  return moved(view, [a, b, c], [x, y, z], zoom);
}

/** How badly a view fits taps and prior, before any fitting. */
export function costOf(view: View, plane: readonly Spot[], taps: readonly Spot[], prior: Prior): number {
  const misses = missesOf(view, plane, taps, prior);
  return total(misses, misses);
}

function missesOf(view: View, plane: readonly Spot[], taps: readonly Spot[], prior: Prior): readonly number[] {
  const lean = [view.right[2] / prior.leanSpread, view.down[2] / prior.leanSpread];
  const zoom = Math.log(view.focal / prior.focal) / prior.focalSpread;
  const missed = plane.flatMap((spot, at) => {
    const seen = seenAt(view, spot);
    const tap = taps[at] ?? seen;
    return [(seen.x - tap.x) / prior.tap, (seen.y - tap.y) / prior.tap];
  });
  return [...missed, ...lean, zoom];
}

const productOf = (slopes: readonly (readonly number[])[]) => slopes.map((a) => slopes.map((b) => total(a, b)));
const total = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
