import type { Traits } from '../../body';

/** How far a shoulder falls, radians (common practice, no source). */
const SLOPES: Record<Traits['shoulders'], number> = {
  square: 0,
  sloped: (20 * Math.PI) / 180,
  none: (25 * Math.PI) / 180,
};

export function shoulderSlope(traits: Traits): number {
  return SLOPES[traits.shoulders];
}

/** Where a set-in sleeve is no longer worth setting in: the arm sits under the neck, or the shoulder is a stub. */
export const LEAST_INSET_MM = 8;
export const LEAST_SHOULDER_MM = 15;
/** A shoulder is never drawn shorter: the edge needs two notches' room and a needle's. */
export const LEAST_SHOULDER_DRAWN_MM = 6;
