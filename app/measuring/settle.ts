import { type Mm, mayLieApart } from '../body';

export type Settled = {
  readonly value: Mm;
  /** Largest reading less the smallest. */
  readonly spread: Mm;
  /** Whether another reading is wanted. */
  readonly ask: boolean;
};

/**
 * One value from the readings of one measure (mm, in the order taken): the mean of up to two, the median of more.
 * Null without readings. What is not a number stays one, for the rules to flag.
 */
export function settle(readings: readonly Mm[]): Settled | null {
  if (readings.length === 0) return null;
  const sorted = [...readings].sort((a, b) => a - b);
  const spread = (sorted.at(-1) ?? 0) - (sorted[0] ?? 0);
  const mean = readings.reduce((total, reading) => total + reading, 0) / readings.length;
  if (readings.length > 2) return { value: median(sorted), spread, ask: false };
  return { value: mean, spread, ask: spread > mayLieApart(mean) };
}

function median(sorted: readonly Mm[]): Mm {
  const middle = sorted.length / 2;
  const low = sorted[Math.ceil(middle) - 1] ?? 0;
  const high = sorted[Math.floor(middle)] ?? low;
  return (low + high) / 2;
}
