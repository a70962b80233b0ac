import type { Mm } from '../../body';
import { type NeckEnd, neckEnd } from '../curves/barrel';

/** Half of the belly's neck edge, mm, and as shares of its width at the legs: narrower it cannot be bound, wider it is no chest. */
const LEAST_BELLY_NECK_MM = 8;
const BELLY_NECK = { least: 0.25, most: 0.95 } as const;
/** From a hole to the spine at least so much cloth is left, mm: less would tear. */
const LEAST_BACK_MM = 12;
/**
 * What gives where no corner is found, as little as may be, in this order: the seam meets the hole nearer its outer side
 * (by shares of its radius), the belly's neck edge is another share of its width, the way from nape to legs and the neck are other by
 * these shares (common practice, no source).
 */
const OFF_MIDDLE: readonly number[] = [0, 0.3, 0.6, 0.8];
const BELLY_NECKS: readonly number[] = [0.4, 0.6, 0.8];
const NAPES: readonly number[] = [1, 0.95, 1.05, 0.9, 1.1];
const WIDEST_NECK = 1.15;
const HALVINGS = 8;

/** Halves, mm: the chest; from the belly's fold to the middle of a hole, and its radius; the neck; from nape and throat to the legs. */
export type CornerAsked = {
  readonly chest: Mm;
  readonly middle: Mm;
  readonly radius: Mm;
  readonly neck: Mm;
  readonly backLong: Mm;
  readonly bellyLong: Mm;
};

/** `off`: how far beyond the middle of a hole its seam lies. */
export type Corner = {
  readonly neck: Mm;
  readonly backLong: Mm;
  readonly off: Mm;
  readonly bellyHalf: Mm;
  readonly backHalf: Mm;
  readonly bellyNeck: Mm;
  readonly end: NeckEnd;
};

/** Back and belly from the neck to the legs, with what has to give for it; null where nothing within the limits does. */
export function barrelCorner(asked: CornerAsked): Corner | null {
  const found = withNeck(asked, asked.neck);
  if (found) return found;
  let [tight, wide] = [asked.neck, asked.neck * WIDEST_NECK];
  let least = withNeck(asked, wide);
  // No wider than it must be: so a larger neck is never given a smaller one.
  for (let n = 0; least && n < HALVINGS; n++) {
    const between = (tight + wide) / 2;
    const closer = withNeck(asked, between);
    if (closer) [wide, least] = [between, closer];
    else tight = between;
  }
  return least;
}

function withNeck(asked: CornerAsked, neck: Mm): Corner | null {
  for (const longer of NAPES)
    for (const share of OFF_MIDDLE) {
      const found = cornerAt(asked, neck, asked.backLong * longer, share);
      if (found) return found;
    }
  return null;
}

function cornerAt(asked: CornerAsked, neck: Mm, backLong: Mm, share: number): Corner | null {
  const { chest, middle, radius, bellyLong } = asked;
  const off = radius * share;
  const bellyHalf = middle + off;
  const backHalf = chest - bellyHalf;
  if (chest - middle < radius + LEAST_BACK_MM) return null;
  // Both seams go equally far sideways where the belly's edge gives up half of what is taken in.
  const even = bellyHalf - (chest - neck) / 2;
  const least = Math.max(LEAST_BELLY_NECK_MM, BELLY_NECK.least * bellyHalf);
  for (const half of [even, ...BELLY_NECKS.map((each) => each * bellyHalf)]) {
    const bellyNeck = Math.max(Math.min(half, BELLY_NECK.most * bellyHalf), least);
    const end = neckEnd({ backHalf, bellyHalf, bellyNeck, backLong, bellyLong, neck });
    if (end) return { neck, backLong, off, bellyHalf, backHalf, bellyNeck, end };
  }
  return null;
}
