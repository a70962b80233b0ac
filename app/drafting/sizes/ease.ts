import type { Mm } from '../../body';
import type { Cloth } from './cloths';

/** Ease by fit, as a share of the girth (common practice, no source). */
export const fits = { close: 0.03, easy: 0.06, roomy: 0.12 } as const;
export type Fit = keyof typeof fits;
export const fitIds = Object.keys(fits) as readonly Fit[];
export const USUAL_FIT: Fit = 'easy';

/** A finished girth this much over what the fit asked for is said (a share). */
export const MOST_OVER = 0.03;

/** A small child's hands are given room. */
const isForSmallHands = ({ dresser }: Readonly<Record<string, unknown>>): boolean => dresser === 'small-child';
export const usualFit = (choices: Readonly<Record<string, unknown>> = {}): Fit =>
  isForSmallHands(choices) ? 'roomy' : USUAL_FIT;

/** No girth has less ease than this; limbs, which must slide through, have more. */
export const LEAST_EASE_MM = 6;
export const LEAST_LIMB_EASE_MM = 10;

/**
 * Finished girth over a body girth: the fit's share or `least`, whichever is more, and what the cloth's own thickness
 * takes: a layer t thick round a girth needs π·t at its middle line (geometry), each lengthwise seam 2·t more.
 */
export function easedGirth(girth: Mm, share: number, cloth: Cloth, least: Mm, seams: number): Mm {
  return girth + Math.max(girth * share, least) + (Math.PI + 2 * seams) * cloth.thickness;
}

/** Finished neck: 3 % or 4 mm, close enough to sit at the crease whatever the fit. */
export function easedNeck(girth: Mm, cloth: Cloth): Mm {
  return girth + Math.max(girth * 0.03, 4) + Math.PI * cloth.thickness;
}

/** A length over a surface: the fit's share or `least`. */
export function easedLength(length: Mm, share: number, least: Mm): Mm {
  return length + Math.max(length * share, least);
}

/** Soft stuffing gives way by about a tenth when it is pushed through (common practice, no source). */
export const SOFT_PASS = 0.9;

/** What of its girth a soft part still needs; a small child does not push. */
export const softPass = (choices: Readonly<Record<string, unknown>>): number =>
  isForSmallHands(choices) ? 1 : SOFT_PASS;
