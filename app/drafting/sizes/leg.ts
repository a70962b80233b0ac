import type { Mm } from '../../body';
import { crotchCurves, type LegFrame } from '../curves/crotch';
import { brent, pathLength, SOLVED_LENGTH_MM } from '../geometry';

/** How much longer than the body's the crotch seam is: sitting bends it (tried in simulated sewing on 16 bodies, no source). */
const CROTCH_EASE = { stands: 1.03, sits: 1.08 } as const;
/** And longer by at least this, mm: a share of a very small toy's is less than its neck is given (common practice, no source). */
const LEAST_CROTCH_EASE_MM = 4;
/** How high the back rises above the front, as shares of the rise: a standing toy's is given, a sitting one's solved between these. */
const RAISED = { stands: { least: 0.12, most: 0.12 }, sits: { least: 0.3, most: 0.75 } } as const;
/** How far the back of a tube round both legs rises above its front, of the rise: as far as the least of a pair of legs does. */
export const TUBE_RAISED = { stands: RAISED.stands.least, sits: RAISED.sits.least } as const;
/** The girth of two legs side by side, of one's: two circles that touch, a thread round both (geometry). */
export const TWO_ROUND = (2 + Math.PI) / Math.PI;
/**
 * Where the front is measured, the waist comes down in front and rises as much behind, or the other way round: by at most these
 * shares of the rise; and the back never lies under the front, nor higher above it than the rise.
 */
const MOST_LOWER = 0.3;
const MOST_HIGHER = 0.15;
const HIGHEST_RAISED = 1;
/** What lowers one side by some raises the other by as much: so it is soon shared, within mm. A gusset that comes or goes makes a jump, no more. */
const MOST_TURNS = 8;
const SHARED_MM = 0.01;
/** A standing leg has a fork; where there is one, it is at least this share of the hip wide: narrower it would be a hook. */
const LEAST_FORK = 0.05;
/** A shorter gap than this is closed by the fork, a longer one by a gusset; so far may the crotch hang before it is said, mm. */
const SMALL_GAP_MM = 6;
/** A shorter gusset has no room between its own allowances, mm (common practice, no source): the fork closes the gap where the leg stays within so many thighs. */
const LEAST_GUSSET_MM = 16;
const WIDEST_LEG = 1.35;
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
  /** The front of that seam, waist to the middle between the legs, where it is measured. */
  readonly front: Mm | null;
  /** Whether a diamond may be set in between the legs. */
  readonly gussets: boolean;
};

/** The finished crotch seam for a body's crotch length from waist to waist: the cloth's thickness goes half round (geometry). */
export function easedCrotch(length: Mm, posture: CrotchAsked['posture'], thickness: Mm): Mm {
  return Math.max(CROTCH_EASE[posture] * length, length + LEAST_CROTCH_EASE_MM) + (Math.PI / 2) * thickness;
}

/** The finished front of it, for what of a body's crotch length lies in front: eased as the whole is. */
export const easedFront = (front: Mm, posture: CrotchAsked['posture'], thickness: Mm): Mm =>
  easedCrotch(2 * front, posture, thickness) / 2;

/**
 * Fork, back rise and gusset, so that the crotch seam (with the gusset's length, where there is one) is as long as asked. A
 * sitting toy's back rises as far as that takes; what is then left goes into the fork, or into a diamond between the legs. Where
 * the front is measured, front and back share the seam as they do on the body: the waist is lowered before and raised behind.
 */
export function crotchOf(asked: CrotchAsked): Crotch {
  const { front, crotch, rise } = asked;
  let lower = 0;
  let found = lowered(asked, lower);
  if (front === null) return found;
  const { legRaised } = found.leg;
  const least = -Math.min(MOST_HIGHER * rise, legRaised / 2);
  const most = Math.min(MOST_LOWER * rise, Math.max(HIGHEST_RAISED * rise - legRaised, 0) / 2);
  for (let turn = 0; turn < MOST_TURNS; turn += 1) {
    // A gusset lies half before, half behind: it takes no part in the difference.
    const longer = 2 * frontOf(found.leg) - seamOf(found.leg) - (2 * front - crotch);
    const next = Math.min(Math.max(lower + longer / 2, least), most);
    if (Math.abs(next - lower) < SHARED_MM) return found;
    lower = next;
    found = lowered(asked, lower);
  }
  return found;
}

/** The same with the waist so much lower in front than the rise asks, and so much higher behind, mm. */
function lowered({ posture, hip, thigh, hem, rise: asked, inside, crotch, gussets }: CrotchAsked, lower: Mm): Crotch {
  const rise = asked - lower;
  const limits = raisedWithin(posture, asked, lower);
  const half = hip / 2;
  const fork = posture === 'stands' || thigh > half ? Math.max(thigh - half, LEAST_FORK * hip) : 0;
  const forked = (legFork: Mm) => ({ legFork, legHem: hem ?? half + legFork });
  const start = { legHalfHip: half, legRise: rise, legInside: inside, ...forked(fork) };
  const leg = { ...start, legRaised: raisedFor(limits, start, crotch) };
  const gap = crotch - seamOf(leg);
  if (gap <= SOLVED_LENGTH_MM) return { leg, gusset: null, hangs: Math.max(-gap, 0), short: 0 };
  const closed = () => half + widened(leg, forked, crotch).legFork <= WIDEST_LEG * thigh;
  const small = gap <= SMALL_GAP_MM || (gap < LEAST_GUSSET_MM && closed());
  const longest = small || !gussets ? 0 : Math.min(gap, (MOST_OF_INSIDE * inside) / LEAST_SIDE);
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

/** The front crotch curve alone, mm. */
const frontOf = (leg: LegFrame): Mm => pathLength(crotchCurves(leg).front);

type Limits = { readonly least: Mm; readonly most: Mm };

function raisedWithin(posture: CrotchAsked['posture'], rise: Mm, lower: Mm): Limits {
  const within = (share: number) => Math.max(0, share * rise + 2 * lower);
  return { least: within(RAISED[posture].least), most: within(RAISED[posture].most) };
}

function raisedFor({ least, most }: Limits, start: Omit<LegFrame, 'legRaised'>, crotch: Mm): Mm {
  if (least === most) return least;
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
