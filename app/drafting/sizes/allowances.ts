import { hemOf, type Mm, USUAL_CASING_MM, USUAL_HEM_MM } from '../../body';
import type { Role } from '../draft-types';
import type { Cloth } from './cloths';

/** Usual allowances by role, mm (¼ in seams, ½ in hems; common practice, no source). */
export const usualAllowances: Readonly<Record<Role, Mm>> = {
  seam: 6,
  hem: USUAL_HEM_MM,
  neckline: 6,
  opening: 6,
  /** Folded back behind the closure. */
  closure: 20,
  casing: USUAL_CASING_MM,
  fold: 0,
  edge: 0,
};

export const allowanceRoles = Object.keys(usualAllowances) as readonly Role[];

/** Allowances by role with the maker's own laid over; cloth that does not fray has its hems cut off, not turned. */
export function allowancesFor(cloth: Cloth, own: Readonly<Record<string, Mm>>): Readonly<Record<Role, Mm>> {
  return { ...usualAllowances, hem: hemOf(cloth), ...own, fold: 0 };
}
