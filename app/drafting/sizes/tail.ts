import type { Mm } from '../../body';
import { type LegFrame, straightBehind } from '../curves/crotch';
import type { LegCount, Tails } from '../heads/choices';
import type { Wearer } from './wearer';

/** Below the crotch, and below the casing of a waist, at least so much is left to sew, mm. */
export const LEAST_LEFT_MM = 10;
/** A tail comes out this much above its root, through a slit this much longer than half of what passes (design, untried). */
export const ABOVE_TAIL_MM = 2;
export const TAIL_ROOM = 1.1;
/** Where it comes in from the waist, its root has so much room in the slit (common practice, no source). */
export const ROOT_ROOM = 1.3;
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
  const root = wearer.of('tail-base-girth');
  const wanted = opens ? (ROOT_ROOM * root) / 2 : TAIL_ROOM * Math.max(root, wearer.of('tail-girth') / 2);
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
