import { type Cloth, isKnit } from './cloths';

/** A knit neckband is this much of its edge, at least and at most (handbooks of sewing knits). */
const LEAST = 0.85;
const MOST = 0.9;
/** Of its cloth's stretch a band sewn on takes up so much. */
const TAKEN_UP = 0.6;
/** Cloth that stretches less makes no band: rib does. */
export const BANDS_FROM = 0.2;

/** How much of its neckline a neckband leaves a head: it stretches in full, the seam of it half as far. */
export function bandOpening(cloth: Cloth): number {
  return Math.min(1, (bandShare(cloth) * (1 + cloth.stretch)) / (1 + cloth.stretch / 2));
}

/** How long a neckband is, as a share of the edge it is stretched to: woven cloth does not stretch. */
export function bandShare(cloth: Cloth): number {
  return isKnit(cloth) ? Math.min(Math.max(1 / (1 + TAKEN_UP * cloth.stretch), LEAST), MOST) : 1;
}

/** A band of rib is this much of the edge it is stretched to (handbooks of sewing knits). */
export const RIB_SHARE = 0.85;
