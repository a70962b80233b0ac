import type { Mm } from '../../body';

/** Three strips, each so wide and so long (1½ × 3 in), sewn side by side with seams of ¼ in: then the middle one shows 1 in. */
export const CHECK_STRIPS_MM = { width: 38.1, length: 76.2, seam: 6.35 } as const;

/** What the middle strip may measure: seams from 0 to 12 mm. */
const seamRange = { least: 14, most: CHECK_STRIPS_MM.width } as const;

/** How wide a maker's seams are, mm, from what her middle strip measures; null where it cannot measure that. */
export function seamFrom(middle: Mm): Mm | null {
  if (!(middle >= seamRange.least && middle <= seamRange.most)) return null;
  return (CHECK_STRIPS_MM.width - middle) / 2;
}
