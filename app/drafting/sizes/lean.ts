import type { Mm, Traits } from '../../body';
import { MOST_OVER } from './ease';

/** Half a front or back across the chest, at its fullest and at the hem, mm. */
export type Quarter = { readonly chest: Mm; readonly tummy: Mm; readonly hem: Mm };

/** No side leans more, either way (common practice, no source). */
export const STEEPEST_SIDE = Math.PI / 6;
const LEAST_LEFT = 0.6;
/** Where down the side the tummy is fullest: on toys that sit it has sunk (common practice, no source). */
const FULLEST: Readonly<Record<Traits['posture'], number>> = { sits: 0.7, stands: 0.6 };

export const fullestOf = ({ posture }: Traits): number => FULLEST[posture];

/** A dart for what the hem asks for ends this share of the side above it. */
const SHORT_OF_HEM = 0.1;

const mostLean = (long: Mm, deeper: Mm): Mm => Math.max(long - deeper, long * LEAST_LEFT) * Math.sin(STEEPEST_SIDE);

/** How far down a side `long` mm, as a share, what had to be widened fills the front again: at the tummy, or at the hem. */
export function footOf({ tummy, hem }: Quarter, long: Mm, fullest: number, deeper: Mm): number {
  const most = mostLean(long, deeper);
  return tummy - fullest * most >= hem - most ? fullest : 1 - SHORT_OF_HEM;
}

/**
 * Widths that a side `long` mm, its underarm `deeper` by so much, can reach without leaning too far: the side swings out straight
 * from the chest before it bulges, so the hem is widened first, or the chest by `darted` mm that are taken in again; where even a
 * straight side falls short of the tummy or the hem, the chest is.
 */
export function leaned(quarter: Quarter, long: Mm, fullest: number, deeper: Mm, darted: Mm = 0): Quarter {
  const { chest, tummy, hem } = quarter;
  const most = mostLean(long, deeper);
  const least = Math.max(chest, tummy - fullest * most, hem - most);
  const swung = hemFrom(least, quarter, fullest, most);
  const wide =
    swung > hem * (1 + MOST_OVER)
      ? Math.max(least, Math.min(chest + darted, hangingFrom(quarter, fullest, most)))
      : least;
  const low = hemFrom(wide, quarter, fullest, most);
  return {
    chest: wide,
    hem: low,
    tummy: Math.max(tummy, wide + fullest * (low - wide)),
  };
}

/** The hem of a side that comes from a chest so wide. */
function hemFrom(wide: Mm, { tummy, hem }: Quarter, fullest: number, most: Mm): Mm {
  // How far the hem must lie out so that a bulge past the tummy is no steeper than that at either end (geometry of the cubic).
  const over = (tummy - wide) / fullest - most * (1 - fullest);
  const swing = over / (over > 0 ? fullest : 2 - fullest);
  return Math.max(hem, wide - most, tummy > wide + fullest * (hem - wide) ? wide + Math.min(swing, most) : 0);
}

/** The chest from which a side that bulges over the tummy ends at a hem as wide as was asked (the swing above, turned round). */
function hangingFrom({ tummy, hem }: Quarter, fullest: number, most: Mm): Mm {
  const turned = 1 / fullest ** 2;
  return (tummy * turned - (most * (1 - fullest)) / fullest - hem * (1 + MOST_OVER)) / (turned - 1);
}
