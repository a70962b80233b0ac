import { type ByScale, hemOf, type Mm, type Scale, USUAL_CASING_MM, USUAL_HEM_MM } from '../../body';
import type { Role } from '../draft-types';
import type { Cloth } from './cloths';

/** Folded back behind a closure: what is sewn on there, sewn through both layers (common practice, no source). */
const FOLDED_BACK_MM: ByScale = { small: 10, usual: 20, large: 25 };

/** Usual allowances by role, mm (¼ in seams, ½ in hems; common practice, no source): narrower on a small toy. */
export function usualAllowances(scale: Scale): Readonly<Record<Role, Mm>> {
  const small = scale === 'small';
  const seam = small ? 5 : 6;
  return {
    seam,
    hem: USUAL_HEM_MM[scale],
    neckline: seam,
    opening: seam,
    closure: FOLDED_BACK_MM[scale],
    casing: USUAL_CASING_MM[scale],
    fold: 0,
    edge: 0,
    finished: 0,
  };
}

/** What is finished already has nothing to add, whoever asks. */
export const allowanceRoles = (Object.keys(usualAllowances('usual')) as readonly Role[]).filter(
  (role) => role !== 'finished',
);

/** Allowances by role with the maker's own laid over; cloth that does not fray has its hems cut off, not turned. */
export function allowancesFor(
  cloth: Cloth,
  own: Readonly<Record<string, Mm>>,
  scale: Scale,
): Readonly<Record<Role, Mm>> {
  return { ...usualAllowances(scale), hem: hemOf(cloth, scale), ...own, fold: 0 };
}
