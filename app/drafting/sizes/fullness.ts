import type { Mm } from '../../body';
import type { Cloth } from './cloths';

/** Gathers take twice the finished width in thin cloth, 1.5 times up to 1 mm (textbooks: two to three times; practice). */
const GATHERS = { thin: 2, upToMm: 0.4, thick: 1.5 } as const;

/** How much fuller cloth of a thickness is cut to be gathered. */
export function gathers(cloth: Cloth): number {
  return cloth.thickness <= GATHERS.upToMm ? GATHERS.thin : GATHERS.thick;
}

/** Flat width of a pleated edge: what shows, and what each pleat takes (textbooks of dressmaking), mm. */
export function pleatedWidth(finished: Mm, pleats: number, take: Mm): Mm {
  return finished + pleats * take;
}

/** Pleats that meet take twice what they show. */
export function meetingWidth(finished: Mm, pleats: number): Mm {
  return pleatedWidth(finished, pleats, (2 * finished) / pleats);
}

/** No wider piece of a skirt or cape is cut: common cloth less its selvedges (common practice, no source). */
export const CLOTH_WIDE_MM = 1100;

/** How many equal panels an edge is cut in, so that none is wider than cloth; two at least. */
export function panelsIn(edge: Mm): number {
  return Math.max(2, Math.ceil(edge / CLOTH_WIDE_MM));
}

/** Half the width of a strip that is a sector of a ring where its edges differ: how far it reaches from its middle, mm. */
export function sectorReach(top: Mm, bottom: Mm, height: Mm): Mm {
  const angle = (bottom - top) / height;
  if (angle < 1e-4) return Math.max(top, bottom);
  return (bottom / angle) * Math.sin(Math.min(angle, Math.PI / 2));
}
