import type { Mm } from '../../body';
import { sockSeam } from '../curves/sock';
import { pathLength } from '../geometry';
import type { Hems, Socks } from '../heads/choices';
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
/** The toes are rounded over this share of the foot's half girth, and of its length, at most. */
const TOE = { wide: 0.6, long: 0.5 } as const;
/** Round heel and instep it is so many times as far as the leg is thick: 2 + √2 where the foot is half as high as that (geometry). */
const LOOP_PER_THICK = 3.5;
/** Between its hem and the toes a sock shows at least this much behind. */
const LEAST_SHOWN_MM = 10;
/** It widens by at most this much for each mm of its length. */
const STEEPEST = 0.6;
/** A firm foot passes only with room to spare. */
const FIRM_FOOT_MM = 5;

/**
 * A sock from the foot alone: a tube as wide as heel and instep ask for, and so long that the way from its top down in front, round
 * the toes, back along the sole and up behind is the toy's.
 */
export const sockSizes = maker(
  [],
  ['sockTop', 'sockFoot', 'sockEven', 'sockHigh', 'sockLong', 'sockToe', 'sockAnkle'],
  (wearer: Wearer<Socks & Hems>) => {
    const foot = wearer.of('foot-girth');
    const long = wearer.of('foot-length');
    const half = Math.max(footOf(wearer), passing(wearer)) / 2;
    const low = LOW * foot;
    const up = wearer.choices.sock === 'high' ? UP_THE_LEG * wearer.of('inside-leg-length') : 0;
    const ankle = ANKLE_SHARE * foot;
    const leg = wearer.choices.sock === 'high' ? (ankle + wearer.of('thigh-girth')) / 2 : ankle;
    const toe = Math.min(TOE.wide * half, TOE.long * long);
    const rib = wearer.choices.hem === 'rib' ? WRIST_RIB_MM[wearer.scale] : 0;
    // Down in front, under the sole and up behind: a tube's fold, toes and seam together.
    const round = 2 * (low + up + long) - foot / LOOP_PER_THICK;
    const frame = { sockTop: half, sockFoot: half, sockEven: 0, sockHigh: 0, sockLong: toe, sockToe: toe };
    const toes = pathLength(sockSeam(frame));
    const least = toe + wearer.hem + LEAST_SHOWN_MM;
    const whole = Math.max(toe + (round - toe - toes) / 2 - rib, least);
    // Wider above: straight where it is hemmed, square to its fold.
    const even = wearer.hem + LEAST_SHOWN_MM;
    const high = Math.max(Math.min(up, whole - toe), even);
    return {
      sizes: {
        ...frame,
        sockTop: Math.max(half, Math.min((half * leg) / foot, half + STEEPEST * (high - even))),
        sockEven: even,
        sockHigh: high,
        sockLong: whole,
        sockAnkle: leg,
      },
    };
  },
);

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
