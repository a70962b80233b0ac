import type { Order } from './card';
import { type Cloth, clothOf } from './cloths';
import type { ByScale, Scale } from './scale';
import type { Mm } from './units';

/** Half an inch turned up, less on a small toy (common practice, no source). */
export const USUAL_HEM_MM: ByScale = { small: 8, usual: 12, large: 12 };
/** An elastic of 5, 6 or 10 mm and 8 mm to turn and stitch (common practice, no source). */
export const USUAL_CASING_MM: ByScale = { small: 13, usual: 14, large: 18 };

/** What is turned up at a hem: cloth that neither frays nor stretches is cut off instead. */
export const hemOf = (cloth: Pick<Cloth, 'frays' | 'stretch'>, scale: Scale): Mm =>
  cloth.frays || cloth.stretch > 0 ? USUAL_HEM_MM[scale] : 0;

/** What an order takes of every length at its hem, sleeves and legs included, mm. */
export function turnedUp({ choices = {}, allowances = {}, ...ordered }: Partial<Order>, scale: Scale): Mm {
  if (choices.hem === 'raw' || choices.hem === 'ready') return 0;
  if (choices.hem === 'casing') return allowances.casing ?? USUAL_CASING_MM[scale];
  const found = clothOf(ordered);
  return allowances.hem ?? (found ? hemOf(found, scale) : USUAL_HEM_MM[scale]);
}
