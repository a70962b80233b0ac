import type { Flag, Mm } from '../../body';
import { brent, SOLVED_LENGTH_MM } from '../geometry';
import type { Gussets, Hems, LegCount, Tails, Trousers } from '../heads/choices';
import { easedGirth, LEAST_LIMB_EASE_MM } from './ease';
import { type Crotch, crotchOf, easedCrotch, easedFront, seamOf, TUBE_RAISED, TWO_ROUND } from './leg';
import { maker } from './maker';
import { LEAST_LEFT_MM, tailOf } from './tail';
import type { Wearer } from './wearer';

type Chosen = LegCount & Trousers & Gussets & Tails & Hems;

const TWO_SEAMS = 2;
const ONE_SEAM = 1;
/** A seat has more ease than a chest: what bends there, at least, mm. */
const LEAST_HIP_EASE_MM = 12;
/** The crotch hangs this much below the body's, mm. */
const BELOW_CROTCH_MM = 6;
/** A soft foot gives way by a twentieth on its way through a leg (common practice, no source). */
const SOFT_FOOT = 0.95;
/** A firm one wants room to spare, mm. */
const FIRM_FOOT_MM = 6;
/** Over the foot as it is pushed through, a hem has so much ease, mm. */
const HEM_EASE_MM = 8;
/** Short legs cover this much of a long one's inside; elastic ones this share of the rise, and at least so much, mm. */
const SHORT_SHARE = 0.4;
const ELASTIC_SHARE = 0.35;
const LEAST_ELASTIC_MM = 22;
/** Down a leg either inseam comes in by at most so much for each mm: steeper, its hem would bow out of the leg. */
const STEEPEST_TAPER = 1;
/** And that hem, square to both inseams, bows by at most this share of their length (common practice, no source). */
const MOST_BOW = 0.5;
/** Pyjamas are as roomy as the roomiest fit, and hardly narrower at the hem than above. */
const PYJAMA_SHARE = 0.12;
const PYJAMA_HEM = 0.9;
/** All of a pair of trousers: seat, legs, crotch with its gusset, and where a tail comes out. 0 where there is no such thing. */
export const trouserSizes = maker(
  [],
  [
    'hip',
    'legHalfHip',
    'legRise',
    'legRaised',
    'legFork',
    'legHem',
    'legInside',
    'legTop',
    'legLeast',
    'crotchSeam',
    'crotchHangs',
    'crotchShort',
    'gussetWanted',
    'gussetLength',
    'gussetSide',
    'tubeHem',
    'tubeLength',
    'tailAbove',
    'tailLong',
    'tailMissing',
  ],
  (wearer: Wearer<Chosen>) => {
    const hip = seatOf(wearer);
    const rise = wearer.of('body-rise') + BELOW_CROTCH_MM;
    const made = wearer.choices.legs === 'tube' ? tubeOf(wearer, hip, rise) : legsOf(wearer, hip, rise);
    return {
      sizes: {
        hip,
        legHalfHip: hip / 2,
        ...made,
        ...tailOf(wearer, { ...made, legHalfHip: hip / 2 }),
      },
      stops: cannotBeDrawn(made, rise) ? [CROTCH_NOT_DRAWN] : [],
    };
  },
);

/** No crotch is shorter than asked by more than this share, and no fork wider than so many rises: it could not be drawn. */
const MOST_SHORT = 0.02;
const WIDEST_FORK = 4;

type Made = Record<
  | 'legRise'
  | 'legRaised'
  | 'legFork'
  | 'legHem'
  | 'legInside'
  | 'legTop'
  | 'legLeast'
  | 'crotchSeam'
  | 'crotchHangs'
  | 'crotchShort'
  | 'gussetWanted'
  | 'gussetLength'
  | 'gussetSide'
  | 'tubeHem'
  | 'tubeLength',
  Mm
>;

export const CROTCH_NOT_DRAWN: Flag = {
  code: 'crotch-not-drawn',
  severity: 'impossible',
  measures: ['crotch-length', 'body-rise', 'hip-girth', 'thigh-girth'],
  values: {},
};

function cannotBeDrawn({ crotchShort, crotchSeam, legFork }: Made, rise: Mm): boolean {
  return crotchShort > MOST_SHORT * crotchSeam || legFork > WIDEST_FORK * rise;
}

/** What is drawn straight from the waist down passes hips and tummy alike. */
function seatOf(wearer: Wearer<Chosen>): Mm {
  return Math.max(
    eased(wearer, 'hip-girth', TWO_SEAMS, LEAST_HIP_EASE_MM),
    eased(wearer, 'waist-girth', TWO_SEAMS, LEAST_HIP_EASE_MM),
  );
}

function eased(wearer: Wearer<Chosen>, id: 'hip-girth' | 'waist-girth' | 'thigh-girth', seams: number, least: Mm): Mm {
  const share = wearer.choices.trousers === 'pyjamas' ? Math.max(wearer.share, PYJAMA_SHARE) : wearer.share;
  return easedGirth(wearer.of(id), share, wearer.cloth, least, seams);
}

function legsOf(wearer: Wearer<Chosen>, hip: Mm, rise: Mm): Made {
  const thigh = eased(wearer, 'thigh-girth', ONE_SEAM, LEAST_LIMB_EASE_MM);
  const inside = insideOf(wearer, rise);
  const least = Math.max(thigh, footOf(wearer));
  const { posture } = wearer.traits;
  const crotch = easedCrotch(wearer.of('crotch-length'), posture, wearer.cloth.thickness);
  const asked = { posture, hip, thigh: least, rise, inside, crotch, front: frontOf(wearer) };
  // Elastic legs, and those laid on a finished hem, come straight down, as wide as their top turns out.
  const straight = wearer.choices.trousers === 'elastic' || wearer.choices.hem === 'ready';
  const hem = straight ? null : hemOf(wearer, least, hip / 2);
  const drawn = (gussets: boolean) => {
    const round = (narrow: Mm | null) => crotchOf({ ...asked, gussets, hem: narrow });
    return hem === null ? round(null) : tapered(hem, inside, round);
  };
  const best = drawn(true);
  const found = wearer.choices.gusset === 'none' ? drawn(false) : best;
  return {
    legRise: found.leg.legRise,
    legRaised: found.leg.legRaised,
    legFork: found.leg.legFork,
    legHem: found.leg.legHem,
    legInside: inside,
    legTop: topOf(found),
    legLeast: least,
    crotchSeam: seamOf(found.leg) + (found.gusset?.length ?? 0),
    crotchHangs: found.hangs,
    crotchShort: found.short,
    gussetWanted: best.gusset?.length ?? 0,
    gussetLength: found.gusset?.length ?? 0,
    gussetSide: found.gusset?.side ?? 0,
    tubeHem: 0,
    tubeLength: 0,
  };
}

/** A front that was only guessed tells no more than the whole does. */
function frontOf(wearer: Wearer): Mm | null {
  if (!wearer.taken('front-crotch')) return null;
  return easedFront(wearer.of('front-crotch'), wearer.traits.posture, wearer.cloth.thickness);
}

/** As narrow at the hem as asked, or as a leg may taper: what its top turns out as hangs a little on its hem. */
function tapered(hem: Mm, inside: Mm, round: (hem: Mm) => Crotch): Crotch {
  const narrowest = (top: Mm) => top - 2 * mostTaper(top, inside) * inside;
  const lacks = (wide: Mm) => narrowest(topOf(round(wide))) - wide;
  const first = round(hem);
  if (lacks(hem) <= 0) return first;
  const solved = brent(lacks, hem, hem + 2 * topOf(first), {
    tolerance: SOLVED_LENGTH_MM,
  });
  return solved.ok ? round(solved.x) : round(narrowest(topOf(first)));
}

/** How far an inseam comes in for each mm down: a hem bows by a quarter of its length times that, or a little less. */
const mostTaper = (top: Mm, inside: Mm): number => Math.min(STEEPEST_TAPER, (4 * MOST_BOW * inside) / top);

const footOf = (wearer: Wearer): Mm =>
  wearer.traits.stuffing === 'firm' ? wearer.of('foot-girth') + FIRM_FOOT_MM : wearer.of('foot-girth') * SOFT_FOOT;
const topOf = ({ leg }: Crotch): Mm => leg.legHalfHip + leg.legFork;

/** Crotch to hem: never so short that its hem takes it all. */
function insideOf(wearer: Wearer<Chosen>, rise: Mm): Mm {
  const floor = 2 * wearer.hem + LEAST_LEFT_MM;
  if (wearer.choices.trousers === 'elastic') return Math.max(ELASTIC_SHARE * rise, LEAST_ELASTIC_MM, floor);
  const long = wearer.of('inside-leg-length');
  return Math.max(wearer.choices.trousers === 'short' ? long * SHORT_SHARE : long, floor);
}

/** Round the hem: a long leg's passes the foot, which gives way where it is soft; a short one's lies round the thigh. */
function hemOf(wearer: Wearer<Chosen>, least: Mm, half: Mm): Mm {
  const long = easedGirth(footOf(wearer), 0, wearer.cloth, HEM_EASE_MM, ONE_SEAM);
  const top = Math.max(least, half);
  if (wearer.choices.trousers === 'short') return Math.max(least, top + (long - top) * SHORT_SHARE);
  return wearer.choices.trousers === 'pyjamas' ? Math.max(long, PYJAMA_HEM * top) : long;
}

/** One tube round both legs: no fork, so no crotch to be long enough. */
function tubeOf(wearer: Wearer<Chosen>, hip: Mm, rise: Mm): Made {
  const hem = Math.max(wearer.girth('foot-girth', TWO_SEAMS, LEAST_LIMB_EASE_MM) * TWO_ROUND, TUBE_LEAST_HEM * hip);
  const wished = wearer.of('waist-to-hem');
  const share = wearer.choices.trousers === 'short' || wearer.choices.trousers === 'elastic' ? SHORT_SHARE : 1;
  const length = Math.max(
    rise + Math.max(wished - rise, 0) * share,
    LEAST_TUBE * rise,
    rise + 2 * wearer.hem + LEAST_LEFT_MM,
  );
  const steepest = hip - 4 * STEEPEST_TUBE * length;
  const narrowing = Math.max(hem, steepest, share === 1 ? 0 : hip * SHORT_TUBE_HEM);
  return {
    ...NO_LEGS,
    legRise: rise,
    legRaised: TUBE_RAISED[wearer.traits.posture] * rise,
    tubeHem: (wearer.choices.trousers === 'pyjamas' ? Math.max(narrowing, PYJAMA_HEM * hip) : narrowing) / 2,
    tubeLength: length,
  };
}

/** A tube is never cut in to less than this share of the hip, a short one less than that; and never shorter than the rise. */
const TUBE_LEAST_HEM = 0.5;
const SHORT_TUBE_HEM = 0.9;
/** Each of its four sides comes in by at most so much for each mm down: plumb at both ends, it would be a hook. */
const STEEPEST_TUBE = 0.5;
const LEAST_TUBE = 1;

const NO_LEGS: Made = {
  legRise: 0,
  legRaised: 0,
  legFork: 0,
  legHem: 0,
  legInside: 0,
  legTop: 0,
  legLeast: 0,
  crotchSeam: 0,
  crotchHangs: 0,
  crotchShort: 0,
  gussetWanted: 0,
  gussetLength: 0,
  gussetSide: 0,
  tubeHem: 0,
  tubeLength: 0,
};
