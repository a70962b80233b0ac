import type { Mm } from '../../body';
import { sockSeam } from '../curves/sock';
import { instepHigh, leastTall } from '../curves/sock-side';
import { pathLength } from '../geometry';
import type { Heels, Hems, Socks } from '../heads/choices';
import { isKnit } from './cloths';
import { easedGirth, LEAST_LIMB_EASE_MM } from './ease';
import { maker } from './maker';
import { WRIST_RIB_MM } from './scale';
import type { Wearer } from './wearer';

/** A knit sock is so much smaller than the foot, or half of what its cloth stretches: it sits by its stretch (handbooks of sewing knits). */
const SMALLER = 0.1;
/** A low sock ends so far above the table, a share of the way round heel and instep; there the leg is so much of it (common practice, no source). */
const LOW = 0.3;
const ANKLE_SHARE = 0.85;
/** A high one goes on up so much of the inside leg. */
const UP_THE_LEG = 0.5;
/** The toes of a tube are rounded over this share of the foot's half girth, and of its length, at most. */
const TOE = { wide: 0.6, long: 0.5 } as const;
/** Round heel and instep it is so many times as far as the leg is thick: 2 + √2 where the foot is half as high as that (geometry). */
const LOOP_PER_THICK = 3.5;
/** How high the foot is, of how thick the leg is: as above. */
const HIGH = 0.5;
/** Heel and toe are rounded within this share of the way round heel and instep (common practice, no source). */
const TURN_SHARE = 0.1;
/** What rounding a square heel takes off the way from it to the instep, of how far it is rounded: √2 less 1 (geometry). */
const ROUNDED_OFF = Math.SQRT2 - 1;
/** A foot this many times as long as the leg is thick stands out in front of it (common practice, no source). */
export const STANDS_OUT = 1.2;
/** Between its hem and the toes a sock shows at least this much behind. */
const LEAST_SHOWN_MM = 10;
/** It widens by at most this much for each mm of its length. */
const STEEPEST = 0.6;
/** A firm foot passes only with room to spare. */
const FIRM_FOOT_MM = 5;

type Made = Wearer<Socks & Hems & Heels>;

/**
 * A sock from the foot alone: two sides with a heel; or a tube, so long that the way from its top down in front, round the toes,
 * back along the sole and up behind is the toy's. `sockStands`: how many times as long as the leg is thick a foot with a heel is.
 */
export const sockSizes = maker(
  [],
  [
    'sockTop',
    'sockFoot',
    'sockEven',
    'sockHigh',
    'sockLong',
    'sockToe',
    'sockAnkle',
    'sockLeg',
    'sockTall',
    'sockAcross',
    'sockSole',
    'sockTurn',
    'sockStands',
  ],
  (wearer: Made) => {
    const foot = wearer.of('foot-girth');
    const high = wearer.choices.sock === 'high';
    const ankle = ANKLE_SHARE * foot;
    const up = high ? UP_THE_LEG * wearer.of('inside-leg-length') : 0;
    const rib = wearer.choices.hem === 'rib' ? WRIST_RIB_MM[wearer.scale] : 0;
    const measured: Measured = {
      foot,
      long: wearer.of('foot-length'),
      up,
      leg: high ? (ankle + wearer.of('thigh-girth')) / 2 : ankle,
      ankle,
      rib,
    };
    const made = wearer.choices.heel === 'shaped' ? sided(wearer, measured) : tube(wearer, measured);
    return { sizes: { ...made, sockAnkle: measured.leg } };
  },
);

type Measured = Readonly<Record<'foot' | 'long' | 'up' | 'leg' | 'ankle' | 'rib', Mm>>;

/** Two sides: the instep as far from the heel as half of what goes round them, the sole as long as half the way round the foot. */
function sided(wearer: Made, { foot, long, up, leg, ankle, rib }: Measured) {
  const half = Math.max(footOf(wearer), passing(wearer)) / 2;
  const sockLeg = Math.min(Math.max((half * ankle) / foot, passing(wearer) / 2), half);
  const thick = foot / LOOP_PER_THICK;
  const sockTurn = TURN_SHARE * foot;
  const frame = {
    sockLeg,
    sockAcross: half + ROUNDED_OFF * sockTurn,
    // Round its outline a foot is as wide as the leg is thick, and round at both ends.
    sockSole: long * (1 + wearer.share) + (Math.PI / 2 - 1) * thick,
    sockTurn,
  };
  // Straight where it is hemmed; wider above only as far down as the instep begins to turn.
  const even = wearer.hem + LEAST_SHOWN_MM;
  const least = leastTall({ ...frame, sockTop: sockLeg, sockEven: 0, sockHigh: 0 }, even);
  const sockTall = Math.max(instepHigh(frame) + LOW * foot - HIGH * thick + up - rib, least);
  const high = Math.max(Math.min(up, sockTall - least + even), even);
  return {
    ...NO_TUBE,
    ...frame,
    sockTop: widened(sockLeg, (half * leg) / foot, high - even),
    sockFoot: half,
    sockEven: even,
    sockHigh: high,
    sockTall,
    sockStands: long / thick,
  };
}

/** A tube rounded at the toes, its fold in front and its seam behind. */
function tube(wearer: Made, { foot, long, up, leg, rib }: Measured) {
  // Down in front, under the sole and up behind: its fold, toes and seam together.
  const round = 2 * (LOW * foot + up + long) - foot / LOOP_PER_THICK;
  const half = Math.max(footOf(wearer), passing(wearer)) / 2;
  const toe = Math.min(TOE.wide * half, TOE.long * long);
  const frame = { sockTop: half, sockFoot: half, sockEven: 0, sockHigh: 0, sockLong: toe, sockToe: toe };
  const toes = pathLength(sockSeam(frame));
  // Wider above: straight where it is hemmed, square to its fold.
  const even = wearer.hem + LEAST_SHOWN_MM;
  const whole = Math.max(toe + (round - toe - toes) / 2 - rib, toe + even);
  const high = Math.max(Math.min(up, whole - toe), even);
  return {
    ...NO_SIDES,
    ...frame,
    sockTop: widened(half, (half * leg) / foot, high - even),
    sockLeg: half,
    sockEven: even,
    sockHigh: high,
    sockLong: whole,
  };
}

/** As wide above as wanted, but never narrower than below, nor steeper over so much of its length. */
const widened = (below: Mm, wanted: Mm, over: Mm): Mm => Math.max(below, Math.min(wanted, below + STEEPEST * over));

const NO_TUBE = { sockLong: 0, sockToe: 0 };
const NO_SIDES = { sockTall: 0, sockAcross: 0, sockSole: 0, sockTurn: 0, sockStands: 0 };

/** The finished girth over heel and instep: eased, and in a knit under the foot's own. */
function footOf({ cloth, share, of }: Wearer): Mm {
  if (!isKnit(cloth)) return easedGirth(of('foot-girth'), share, cloth, LEAST_LIMB_EASE_MM, 1);
  const smaller = Math.min(cloth.stretch / 2, SMALLER);
  return easedGirth(of('foot-girth') * (1 - smaller), share, cloth, 0, 1);
}

/** What a foot passes through: a seamed edge stretches half as far as its cloth. */
function passing({ cloth, traits, of, softPass }: Wearer): Mm {
  const needs = traits.stuffing === 'firm' ? of('foot-girth') + FIRM_FOOT_MM : of('foot-girth') * softPass;
  return needs / (1 + cloth.stretch / 2);
}
