import type { Mm } from '../../body';
import { footOf, type Quarter, STEEPEST_SIDE } from './lean';
import type { Sizes } from './maker';

/** A dart with two points: what it takes in at the underarm, and how far it reaches above and below that, mm. */
export type Dart = { readonly width: Mm; readonly up: Mm; readonly down: Mm };

/** More for its length puckers at its points, where it then opens by 31° (common practice, no source). */
const WIDEST_SHARE = 0.56;
/** It begins this share of the armhole's depth above the underarm. */
const UP_SHARE = 0.45;
/** However long, it takes no more of half a front than this share: a second one stands beside it. */
const MOST_OF_HALF = 0.25;

type Known = Sizes<'sideLevel' | 'armholeDepth' | 'fullest' | 'underarmDeeper' | 'dartMost'>;

/** The widest dart that half a front or back of these girths has room for; of no width where none is to be sewn. */
export function widestDart(sizes: Known, quarter: Quarter): Dart {
  const { armholeDepth, sideLevel, fullest, underarmDeeper, dartMost } = sizes;
  const long = sideLevel - armholeDepth;
  const foot = footOf(quarter, long, fullest, underarmDeeper);
  const [up, down] = [armholeDepth * UP_SHARE, long * foot * Math.cos(STEEPEST_SIDE)];
  return {
    width: Math.min(Math.min(up, down) * WIDEST_SHARE, dartMost * MOST_OF_HALF),
    up,
    down,
  };
}
