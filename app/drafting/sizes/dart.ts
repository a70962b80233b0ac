import type { Mm } from '../../body';
import { MOST_OVER } from './ease';
import { footOf, STEEPEST_SIDE } from './lean';
import type { Sizes } from './maker';
import { asked, drawnGirth, drawnTrunk, type SideSize, type TrunkSize } from './trunk';

/** A dart at the chest of a half front: what it takes in at the underarm, and how far it reaches above and below that, mm. */
export type Dart = { readonly width: Mm; readonly up: Mm; readonly down: Mm };
type Known = Sizes<TrunkSize | SideSize>;

/** Less is not worth a dart; more for its length puckers at its points, where it then opens by 31° (common practice, no source). */
const LEAST_WIDTH_MM = 5;
const WIDEST_SHARE = 0.56;
/** It begins this share of the armhole's depth above the underarm. */
const UP_SHARE = 0.45;

/**
 * What a front that was widened for its side to reach over the tummy is taken in again at the chest: a dart with two points, most
 * at the underarm, nothing where the tummy fills the front. Null where the garment is hardly wider than was asked.
 */
export function frontDart(sizes: Known): Dart | null {
  const { chest, armholeDepth, sideLevel, fullest, dartMost, underarmDeeper } = sizes;
  const long = sideLevel - armholeDepth;
  const foot = footOf(asked(sizes, 'front'), long, fullest, underarmDeeper);
  const [up, down] = [armholeDepth * UP_SHARE, long * foot * Math.cos(STEEPEST_SIDE)];
  const over = drawnTrunk(sizes).front.chest - asked(sizes, 'front').chest;
  const width = Math.min(over, Math.min(up, down) * WIDEST_SHARE, dartMost);
  return width >= LEAST_WIDTH_MM && drawnGirth(sizes, 'chest') > chest * (1 + MOST_OVER) ? { width, up, down } : null;
}

/** The chest as it is sewn: as it is drawn, less what both darts take in. */
export function finishedChest(sizes: Known): Mm {
  return drawnGirth(sizes, 'chest') - 2 * (frontDart(sizes)?.width ?? 0);
}
