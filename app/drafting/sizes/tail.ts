import type { Mm } from '../../body';
import { type LegFrame, straightBehind } from '../curves/crotch';
import type { LegCount, Tails } from '../heads/choices';
import type { Wearer } from './wearer';

/** Below the crotch, and below the casing of a waist, at least so much is left to sew, mm. */
export const LEAST_LEFT_MM = 10;
/** A tail comes out this much above its root, mm. */
export const ABOVE_TAIL_MM = 2;
/** A slit opens to twice its length (geometry): it is this much longer than half of what passes, and than half of the root that stays in it (common practice, no source). */
const TAIL_ROOM = 1.1;
const ROOT_ROOM = 1.3;
/** Below the casing, and above the crotch, so much of the back seam is sewn, mm. */
const BELOW_CASING_MM = 22;
const MOST_KEPT = 0.25;

/**
 * Where the back seam stays open: the tail's thickest place passes, and something of the seam is left above and below. Opened from
 * the waist down, only the root lies in the slit; what closes above it is straight.
 */
export function tailOf(
  wearer: Wearer<Tails & LegCount>,
  leg: LegFrame,
): Record<'tailAbove' | 'tailLong' | 'tailMissing', Mm> {
  const { tail, legs } = wearer.choices;
  if (tail === 'covered') return { tailAbove: 0, tailLong: 0, tailMissing: 0 };
  const opens = tail === 'waist';
  const seam = leg.legRise + leg.legRaised;
  const wanted = slitFor(wearer);
  const highest = Math.min(BELOW_CASING_MM, seam * MOST_KEPT);
  const lowest = seam - Math.min(LEAST_LEFT_MM, seam * MOST_KEPT);
  const from = Math.max(wearer.of('waist-to-tail') - ABOVE_TAIL_MM, highest);
  const straight = opens && legs !== 'tube' ? Math.max(straightBehind(leg), highest) : lowest;
  const long = Math.min(wanted + Math.max(from - straight, 0), lowest - highest);
  const above = Math.min(from, straight, lowest - long);
  return {
    tailAbove: above,
    tailLong: long,
    tailMissing: Math.max(wanted - long, 0),
  };
}

/** How long a slit a tail asks for: its root lies in it, and its thickest place passes, but where it comes in from the waist. */
export function slitFor(wearer: Wearer<Tails>): Mm {
  const root = (ROOT_ROOM * wearer.of('tail-base-girth')) / 2;
  return wearer.choices.tail === 'waist' ? root : Math.max(root, (TAIL_ROOM * wearer.of('tail-girth')) / 2);
}
