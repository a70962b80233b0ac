import type { Look } from '../../rows/names';
import { BINDS_UP_TO_MM, GATHERS_UP_TO_MM, THICK_FROM_MM } from '../../sizes/cloths';

type Seen = { readonly wearer: Pick<Look['wearer'], 'cloth'> };

/** The cloth's thickness, where it is too thick to gather or pleat well; else nothing to tell. */
export function thickness(look: Seen): { readonly thickness: number } | null {
  return over(GATHERS_UP_TO_MM, look);
}

/** A neck in cloth so thick is tried in scrap before the garment's own is cut. */
export const scrapNeck = {
  code: 'neck-in-scrap',
  measures: ['neck-girth'],
  told: (look: Seen) => over(THICK_FROM_MM, look),
} as const;

/** Cloth so thick is bound in a thin one. */
export const thinBinding = {
  code: 'thin-binding',
  measures: [],
  told: (look: Seen) => over(BINDS_UP_TO_MM, look),
} as const;

function over(limit: number, { wearer }: Seen): { readonly thickness: number } | null {
  const { thickness } = wearer.cloth;
  return thickness > limit ? { thickness } : null;
}
