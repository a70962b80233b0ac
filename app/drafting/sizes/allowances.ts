import type { Mm } from '../../body';
import type { Role } from '../draft-types';
import type { Cloth } from './cloths';

/** Usual allowances by role, mm (¼ in seams, ½ in hems; common practice, no source). */
export const usualAllowances: Readonly<Record<Role, Mm>> = {
  seam: 6,
  hem: 12,
  neckline: 6,
  opening: 6,
  /** Folded back behind the closure. */
  closure: 20,
  /** A 6 mm elastic and 8 mm to turn and stitch. */
  casing: 14,
  fold: 0,
  edge: 0,
};

export const allowanceRoles = Object.keys(usualAllowances) as readonly Role[];

/** Allowances by role with the maker's own laid over; cloth that does not fray has its hems cut off, not turned. */
export function allowancesFor(cloth: Cloth, own: Readonly<Record<string, Mm>>): Readonly<Record<Role, Mm>> {
  const hem = cloth.frays || cloth.stretch > 0 ? usualAllowances.hem : 0;
  return { ...usualAllowances, hem, ...own, fold: 0 };
}
