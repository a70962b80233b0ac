import { GATHERS_UP_TO_MM } from '../../sizes/cloths';
import type { Look } from '../garment';

/** The cloth's thickness, where it is too thick to gather or pleat well; else nothing to tell. */
export function thickness({ wearer }: Look): { readonly thickness: number } | null {
  const { thickness } = wearer.cloth;
  return thickness > GATHERS_UP_TO_MM ? { thickness } : null;
}
