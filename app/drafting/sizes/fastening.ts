import type { Mm } from '../../body';

/** Hook and loop this wide, by the toy's chest: under the first, under the second, over both (common practice, no source). */
const TAPES: readonly (readonly [under: Mm, wide: Mm])[] = [
  [220, 6],
  [450, 10],
];
const WIDEST_MM = 20;

/** How wide hook and loop is on a toy with this chest, mm. */
export function tapeWidth(chest: Mm | undefined): Mm {
  if (chest === undefined) return 10;
  return TAPES.find(([under]) => chest < under)?.[1] ?? WIDEST_MM;
}

/** An elastic is a tenth shorter than what it goes round, and laps where its ends are joined (common practice, no source). */
const ELASTIC_SHARE = 0.9;
const ELASTIC_JOIN_MM = 20;

/** Elastic to cut for a girth, or for a part of one whose ends are sewn in, mm. */
export function elasticFor(girth: Mm): Mm {
  return girth * ELASTIC_SHARE + ELASTIC_JOIN_MM;
}
