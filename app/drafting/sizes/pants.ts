import type { Mm } from '../../body';
import { legEdge, NARROW_SHARE, type PantsFrame } from '../curves/pants';
import { brent, pathLength, SOLVED_LENGTH_MM } from '../geometry';
import type { LegCount, Pants, Tails } from '../heads/choices';
import { easedGirth, LEAST_LIMB_EASE_MM, SOFT_PASS } from './ease';
import { easedCrotch, easedFront, TUBE_RAISED } from './leg';
import { maker } from './maker';
import { PAST_CENTRE_MM } from './scale';
import { ABOVE_TAIL_MM, slitFor, tailOf as tubeTail } from './tail';
import type { Wearer } from './wearer';

const TWO_SEAMS = 2;
/** A seat has more ease than a chest: what bends there, at least, mm. */
const LEAST_HIP_EASE_MM = 12;
/** Of the way from waist to waist the narrowest place lies so far down: a seat that is sat on is longer behind (common practice, no source). */
const MIDDLE = { stands: 0.47, sits: 0.42 } as const;
/** Where the front is measured, it is no less and no more of the whole: a seat that is sat on lies behind, wherever the middle was seen. */
const LEAST_FRONT = 0.36;
const MOST_FRONT = { stands: 0.5, sits: 0.46 } as const;
/** A waist comes down to its middle in front, and rises behind, by at most this share of a quarter of the seat: steeper it would not turn. */
const STEEPEST_WAIST = 0.35;
/** Between the legs half as wide as this share of a quarter of the seat, and at least, mm (common practice, no source). */
const CROTCH_SHARE = 0.3;
/** Where the legs are so thin that their openings would gape, it is cut wider, up to this share (common practice, no source). */
const WIDEST_CROTCH_SHARE = 0.5;
const LEAST_CROTCH_MM = 11;
/** Sides are at most this share of the rise long, and never so short that nothing could be sewn, mm. */
const LONGEST_SIDE = 0.75;
const LEAST_SIDE_MM = 14;
const LEAST_LEG_MM = 6;
/** A firm foot wants room to spare, mm. */
const FIRM_FOOT_MM = 6;
/** A tube reaches this much below the rise, mm, and is turned there. */
const BELOW_RISE_MM = 10;
/** Below the waist and above the legs so much stays whole, as a share of the back. */
const KEPT = 0.2;

/** A pair of pants: how wide, how long from waist to waist, and how high its legs are cut; or a tube round legs sewn together. */
export const pantsSizes = maker(
  [],
  [
    'hip',
    'pantsFront',
    'pantsBack',
    'pantsSide',
    'pantsLong',
    'pantsCrotch',
    'pantsMiddle',
    'pantsRaised',
    'pantsLeg',
    'pantsLegLeast',
    'pantsLonger',
    'legHalfHip',
    'legRaised',
    'tubeHem',
    'tubeLength',
    'tailAbove',
    'tailLong',
    'tailMissing',
  ],
  (wearer: Wearer<Pants & LegCount & Tails>) => {
    const hip = Math.max(
      wearer.girth('hip-girth', TWO_SEAMS, LEAST_HIP_EASE_MM),
      wearer.girth('waist-girth', TWO_SEAMS, LEAST_HIP_EASE_MM),
    );
    const rise = wearer.of('body-rise');
    const tube = Math.max(rise + BELOW_RISE_MM, 2 * wearer.hem + LEAST_SIDE_MM);
    if (wearer.choices.legs === 'tube') {
      const legRaised = TUBE_RAISED[wearer.traits.posture] * rise;
      const made = { ...NO_TUBE, legHalfHip: hip / 2, legRaised, tubeHem: hip / 2, tubeLength: tube };
      return { sizes: { ...NO_LEGS, ...made, hip, ...tubeTail(wearer, { ...NO_FORK, ...made, legRise: tube }) } };
    }
    const made = legsOf(wearer, hip / 4, rise);
    return { sizes: { ...made, ...tailOf(wearer, made), hip, ...NO_TUBE } };
  },
);

const NO_FORK = { legFork: 0, legHem: 0, legInside: 0 };
const NO_TUBE = { legHalfHip: 0, legRaised: 0, tubeHem: 0, tubeLength: 0 };
const NO_LEGS = {
  pantsFront: 0,
  pantsBack: 0,
  pantsSide: 0,
  pantsLong: 0,
  pantsCrotch: 0,
  pantsMiddle: 0,
  pantsRaised: 0,
  pantsLeg: 0,
  pantsLegLeast: 0,
  pantsLonger: 0,
  tailAbove: 0,
  tailLong: 0,
  tailMissing: 0,
};

/** Legs cut so high that a thigh goes through with ease, and a foot; where even the highest is too small, the way between them is longer. */
function legsOf(wearer: Wearer<Pants>, quarter: Mm, rise: Mm) {
  const { posture, stuffing } = wearer.traits;
  const nappy = wearer.choices.pants === 'nappy';
  const lap = nappy ? 2 * PAST_CENTRE_MM[wearer.scale] : 0;
  const thigh = easedGirth(wearer.of('thigh-girth'), wearer.share, wearer.cloth, LEAST_LIMB_EASE_MM, 1);
  const passes = (foot: Mm) => (stuffing === 'firm' ? foot + FIRM_FOOT_MM : foot * SOFT_PASS);
  const least = nappy ? thigh : Math.max(thigh, passes(wearer.of('foot-girth')));
  const crotch = easedCrotch(wearer.of('crotch-length'), posture, wearer.cloth.thickness);
  const share = frontShare(wearer, crotch);
  // The sides are as long as front and back are between them: what the front is shorter, the back is longer.
  const raised = (long: Mm) => Math.min((0.5 - share) * long, STEEPEST_WAIST * quarter);
  const half = Math.min(Math.max(quarter * CROTCH_SHARE, LEAST_CROTCH_MM), 0.8 * quarter);
  const frame = (pantsSide: Mm, pantsLong: Mm, pantsCrotch: Mm): PantsFrame => ({
    pantsFront: quarter,
    pantsBack: quarter + lap,
    pantsSide,
    pantsLong,
    pantsCrotch,
    pantsMiddle: share * pantsLong,
    pantsRaised: raised(pantsLong),
  });
  // What laps is part of the leg's edge, and goes round nothing.
  const round = (side: Mm, long: Mm, crotch = half): Mm => pathLength(legEdge(frame(side, long, crotch))) - lap;
  const most = Math.max(LONGEST_SIDE * rise, LEAST_SIDE_MM);
  // In front a side, and something of the leg below it, lie above the narrowest place.
  const above = share - NARROW_SHARE / 2;
  const longest = Math.max(crotch, 2 * LEAST_SIDE_MM + 2 * half, (LEAST_SIDE_MM + LEAST_LEG_MM) / above);
  const long = round(LEAST_SIDE_MM, longest) >= least ? longest : longerFor(least, longest, round);
  const before = above * long + raised(long);
  const behind = (1 - share - NARROW_SHARE / 2) * long - raised(long);
  const highest = Math.max(Math.min(most, before - LEAST_LEG_MM, behind - LEAST_LEG_MM), LEAST_SIDE_MM);
  const solved = brent((side) => round(side, long) - least, LEAST_SIDE_MM, highest, { tolerance: SOLVED_LENGTH_MM });
  const side = solved.ok ? solved.x : solved.atHigh > 0 ? highest : LEAST_SIDE_MM;
  const between = widerFor(least, half, Math.max(half, quarter * WIDEST_CROTCH_SHARE), (wide) =>
    round(side, long, wide),
  );
  return {
    ...frame(side, long, between),
    pantsLeg: round(side, long, between),
    pantsLegLeast: least,
    pantsLonger: Math.max(long - crotch, 0),
  };
}

/** How much of the way from waist to waist lies in front: as measured, else as is usual. */
function frontShare(wearer: Wearer, crotch: Mm): number {
  const { posture } = wearer.traits;
  if (!wearer.taken('front-crotch')) return MIDDLE[posture];
  const front = easedFront(wearer.of('front-crotch'), posture, wearer.cloth.thickness);
  return Math.min(Math.max(front / crotch, LEAST_FRONT), MOST_FRONT[posture]);
}

/** The way between the legs with which the highest leg is as wide as asked. */
function longerFor(least: Mm, from: Mm, round: (side: Mm, long: Mm) => Mm): Mm {
  const solved = brent((long) => round(LEAST_SIDE_MM, long) - least, from, from + least, {
    tolerance: SOLVED_LENGTH_MM,
  });
  return solved.ok ? solved.x : from + least;
}

/** Half as wide between the legs as makes their openings no wider than asked, or as near as the widest comes. */
function widerFor(least: Mm, half: Mm, widest: Mm, round: (half: Mm) => Mm): Mm {
  if (round(half) <= least + SOLVED_LENGTH_MM) return half;
  const solved = brent((wide) => round(wide) - least, half, widest, { tolerance: SOLVED_LENGTH_MM });
  return solved.ok ? solved.x : widest;
}

/**
 * Where the fold stays open behind: the tail's thickest place passes, and something is left above and below. Opened from the waist
 * down, only the root lies in it.
 */
function tailOf(wearer: Wearer<Tails>, { pantsLong, pantsMiddle }: { pantsLong: Mm; pantsMiddle: Mm }) {
  if (wearer.choices.tail === 'covered') return { tailAbove: 0, tailLong: 0, tailMissing: 0 };
  const behind = pantsLong - pantsMiddle;
  const wanted = slitFor(wearer);
  const tailLong = Math.min(wanted, behind * (1 - 2 * KEPT));
  const lowest = behind * (1 - KEPT) - tailLong;
  const tailAbove = Math.min(Math.max(wearer.of('waist-to-tail') - ABOVE_TAIL_MM, behind * KEPT), lowest);
  return { tailAbove, tailLong, tailMissing: wanted - tailLong };
}
