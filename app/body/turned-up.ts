import type { Order } from './card';
import { type Cloth, cloths, USUAL_CLOTH } from './cloths';
import type { Mm } from './units';

/** Half an inch turned up (common practice, no source). */
export const USUAL_HEM_MM: Mm = 12;
/** A 6 mm elastic and 8 mm to turn and stitch (common practice, no source). */
export const USUAL_CASING_MM: Mm = 14;

/** What is turned up at a hem: cloth that neither frays nor stretches is cut off instead. */
export const hemOf = (cloth: Pick<Cloth, 'frays' | 'stretch'>): Mm =>
  cloth.frays || cloth.stretch > 0 ? USUAL_HEM_MM : 0;

/** What an order takes of every length at its hem, sleeves and legs included, mm. */
export function turnedUp({ cloth, choices = {}, allowances = {} }: Partial<Order>): Mm {
  if (choices.hem === 'raw') return 0;
  if (choices.hem === 'casing') return allowances.casing ?? USUAL_CASING_MM;
  const found = cloths.find(({ id }) => id === (cloth ?? USUAL_CLOTH));
  return allowances.hem ?? (found ? hemOf(found) : USUAL_HEM_MM);
}
