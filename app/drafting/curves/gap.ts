import type { Mm } from '../../body';

/** No bag is turned through less than two fingers (common practice, no source). */
const LEAST_GAP_MM = 50;

/** What is sewn shut all round is turned through a gap of a quarter of its seam, mm. */
export function gapIn(seam: Mm): Mm {
  return Math.max(LEAST_GAP_MM, seam / 4);
}
