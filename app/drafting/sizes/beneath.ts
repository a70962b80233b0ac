import type { MeasureId, Mm } from '../../body';

/** What a garment worn beneath lies round: a layer t thick makes a girth 2π·t longer outside it (geometry), half of it before and half behind. */
const ROUND: Readonly<Partial<Record<MeasureId, number>>> = {
  'neck-girth': 1,
  'chest-girth': 1,
  'body-girth': 1,
  'hem-girth': 1,
  'waist-girth': 1,
  'hip-girth': 1,
  'over-arms-girth': 1,
  'arm-root-girth': 1,
  'upper-arm-girth': 1,
  'front-width': 0.5,
  'back-width': 0.5,
  'belly-girth': 1,
  'front-leg-girth': 1,
};
/** A deeper armhole lets both sleeves through: the layer over the arm and the one under it. */
const ACROSS: readonly MeasureId[] = ['armhole-depth'];

/** How much longer a measure is over a garment of cloth so thick, mm. */
export function beneath(id: MeasureId, thickness: Mm): Mm {
  if (ACROSS.includes(id)) return 2 * thickness;
  return (ROUND[id] ?? 0) * 2 * Math.PI * thickness;
}
