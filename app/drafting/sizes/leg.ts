import type { Mm } from '../../body';
import { crotchCurves, type LegFrame } from '../curves/crotch';
import { brent, pathLength, SOLVED_LENGTH_MM } from '../geometry';

/** How much longer than the body's the crotch seam is: sitting bends it (tried in simulated sewing on 16 bodies, no source). */
const CROTCH_EASE = { stands: 1.03, sits: 1.08 } as const;
/** How high the back rises above the front, as shares of the rise: what a standing toy asks for, and what may be solved for a sitting one. */
const STANDING_RAISED = 0.12;
const LEAST_RAISED = 0.3;
const MOST_RAISED = 0.75;
/** A standing leg has a fork; where there is one, it is at least this share of the hip wide: narrower it would be a hook. */
const LEAST_FORK = 0.05;
/** A shorter gap than this is closed by the fork, a longer one by a gusset; so far may the crotch hang before it is said, mm. */
const SMALL_GAP_MM = 6;
/** A gusset's side, as shares of its length along the centre, and of the inside leg that it is sewn to. */
const LEAST_SIDE = 0.6;
const USUAL_SIDE = 1.2;
const MOST_OF_INSIDE = 0.8;
/** No fork is wider than this share of the hip. */
const MOST_FORK = 1;

export type Gusset = { readonly length: Mm; readonly side: Mm };
export type Crotch = {
  readonly leg: LegFrame;
  readonly gusset: Gusset | null;
  /** How much longer than asked the crotch seam is, mm: it hangs so low; 0 where it is as asked. */
  readonly hangs: Mm;
  /** How much shorter than asked it stays, mm: nothing reached it. */
  readonly short: Mm;
};

export type CrotchAsked = {
  readonly posture: keyof typeof CROTCH_EASE;
  /** Finished hip and thigh, the rise and inside leg as drawn, and the eased crotch seam from waist to waist, mm. */
  readonly hip: Mm;
  readonly thigh: Mm;
  /** Null: as wide as the leg turns out at its top. */
  readonly hem: Mm | null;
  readonly rise: Mm;
  readonly inside: Mm;
  readonly crotch: Mm;
  /** Whether a diamond may be set in between the legs. */
  readonly gussets: boolean;
};

/** The finished crotch seam for a body's crotch length from waist to waist: the cloth's thickness goes half round (geometry). */
export function easedCrotch(length: Mm, posture: CrotchAsked['posture'], thickness: Mm): Mm {
  return CROTCH_EASE[posture] * length + (Math.PI / 2) * thickness;
}

/**
 * Fork, back rise and gusset, so that the crotch seam (with the gusset's length, where there is one) is as long as asked. A
 * sitting toy's back rises as far as that takes; what is then left goes into the fork, or into a diamond between the legs.
 */
export function crotchOf({ posture, hip, thigh, hem, rise, inside, crotch, gussets }: CrotchAsked): Crotch {
  const half = hip / 2;
  const fork = posture === 'stands' || thigh > half ? Math.max(thigh - half, LEAST_FORK * hip) : 0;
  const forked = (legFork: Mm) => ({ legFork, legHem: hem ?? half + legFork });
  const start = { legHalfHip: half, legRise: rise, legInside: inside, ...forked(fork) };
  const leg = { ...start, legRaised: raisedFor(posture, start, crotch) };
  const gap = crotch - seamOf(leg);
  if (gap <= SOLVED_LENGTH_MM) return { leg, gusset: null, hangs: Math.max(-gap, 0), short: 0 };
  const longest = gap <= SMALL_GAP_MM || !gussets ? 0 : Math.min(gap, (MOST_OF_INSIDE * inside) / LEAST_SIDE);
  const wide = longest < gap ? widened(leg, forked, crotch - longest) : leg;
  const short = crotch - longest - seamOf(wide);
  const side = Math.max(LEAST_SIDE * longest, Math.min(USUAL_SIDE * longest, MOST_OF_INSIDE * inside));
  return {
    leg: wide,
    gusset: longest > 0 ? { length: longest, side } : null,
    hangs: Math.max(-short - SOLVED_LENGTH_MM, 0),
    short: Math.max(short - SOLVED_LENGTH_MM, 0),
  };
}

/** Both crotch curves together, mm. */
export function seamOf(leg: LegFrame): Mm {
  const { front, back } = crotchCurves(leg);
  return pathLength(front) + pathLength(back);
}

function raisedFor(posture: CrotchAsked['posture'], start: Omit<LegFrame, 'legRaised'>, crotch: Mm): Mm {
  const { legRise } = start;
  if (posture === 'stands') return STANDING_RAISED * legRise;
  const [least, most] = [LEAST_RAISED * legRise, MOST_RAISED * legRise];
  const left = (legRaised: Mm) => seamOf({ ...start, legRaised }) - crotch;
  const solved = brent(left, least, most, { tolerance: SOLVED_LENGTH_MM });
  if (solved.ok) return solved.x;
  return solved.atLow > 0 ? least : most;
}

/** The fork as wide as the seam asks, or as wide as it may be. */
function widened(leg: LegFrame, forked: (fork: Mm) => Pick<LegFrame, 'legFork' | 'legHem'>, crotch: Mm): LegFrame {
  const hip = 2 * leg.legHalfHip;
  const least = Math.max(leg.legFork, LEAST_FORK * hip);
  const most = Math.max(least, MOST_FORK * hip);
  const left = (fork: Mm) => seamOf({ ...leg, ...forked(fork) }) - crotch;
  const solved = brent(left, least, most, { tolerance: SOLVED_LENGTH_MM });
  return { ...leg, ...forked(solved.ok ? solved.x : solved.atLow > 0 ? least : most) };
}
