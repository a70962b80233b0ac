import type { Look, NoteRow } from '../../rows/garment';
import { GATHERS_UP_TO_MM, THICK_FROM_MM } from '../../sizes/cloths';

/** The cloth's thickness, where it is too thick to gather or pleat well; else nothing to tell. */
export function thickness(look: Look): { readonly thickness: number } | null {
  return over(GATHERS_UP_TO_MM, look);
}

/** A neck in cloth so thick is tried in scrap before the garment's own is cut. */
export const scrapNeck: NoteRow = {
  code: 'neck-in-scrap',
  measures: ['neck-girth'],
  told: (look) => over(THICK_FROM_MM, look),
};

function over(limit: number, { wearer }: Look): { readonly thickness: number } | null {
  const { thickness } = wearer.cloth;
  return thickness > limit ? { thickness } : null;
}
