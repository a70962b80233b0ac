import type { Mm } from '../../body';
import { type Dart, widestDart } from './dart-room';
import { MOST_OVER } from './ease';
import type { Sizes } from './maker';
import { asked, drawnGirth, drawnTrunk, type SideSize, type TrunkSize } from './trunk';

/** The darts of half a front or back, each alike. */
export type Darts = Dart & { readonly count: number };
/** Those of a bodice; null where there are none. */
export type Darted = {
  readonly front: Darts | null;
  readonly back: Darts | null;
};
type Known = Sizes<TrunkSize | SideSize>;

/** Less is not worth a dart (common practice, no source). */
const LEAST_WIDTH_MM = 5;
/** How many darts half a front and half a back may have, the fewest first. */
const WAYS = [
  { front: 1, back: 0 },
  { front: 1, back: 1 },
  { front: 2, back: 1 },
  { front: 2, back: 2 },
] as const;
const NONE: Darted = { front: null, back: null };

/**
 * What was widened for its side to reach over the tummy is taken in again at the chest: by darts with two points, most at the
 * underarm, nothing where the tummy fills front and back. The fewest that leave it hardly wider than was asked, or narrowest.
 */
export function dartsOf(sizes: Known): Darted {
  const enough = sizes.chest * (1 + MOST_OVER);
  const drawn = drawnGirth(sizes, 'chest');
  let best = NONE;
  for (const { front, back } of WAYS) {
    if (drawn - takenIn(best) <= enough) return best;
    const way = {
      front: upTo(front, 'front', sizes),
      back: upTo(back, 'back', sizes),
    };
    if (takenIn(way) > takenIn(best)) best = way;
  }
  return best;
}

/** The chest as it is sewn: as it is drawn, less what all darts take in. */
export function finishedChest(sizes: Known): Mm {
  return drawnGirth(sizes, 'chest') - takenIn(dartsOf(sizes));
}

const takenIn = ({ front, back }: Darted): Mm =>
  2 * ((front ? front.count * front.width : 0) + (back ? back.count * back.width : 0));

/** As many darts as are of use, so many at most. */
function upTo(most: number, side: 'front' | 'back', sizes: Known): Darts | null {
  const quarter = asked(sizes, side);
  const over = drawnTrunk(sizes)[side].chest - quarter.chest;
  const { width, up, down } = widestDart(sizes, quarter);
  const count = Math.min(most, Math.ceil(over / Math.max(width, LEAST_WIDTH_MM)));
  const each = Math.min(width, over / count);
  return count > 0 && each >= LEAST_WIDTH_MM ? { count, width: each, up, down } : null;
}
