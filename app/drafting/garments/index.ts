/** The garments, one file each: data only. Nothing is computed here; the pipeline in drafting/ reads these rows. */
import type { Garment } from './garment';
import { hoodedTop } from './hooded-top';

export { allowanceRoles, usualAllowances } from '../allowances';
export { type Cloth, cloths, USUAL_CLOTH } from '../sizes/cloths';
export { fitIds, fits, USUAL_FIT } from '../sizes/ease';
export { active, type Choice, type Garment } from './garment';

export const garments: readonly Garment[] = [hoodedTop];

export function findGarment(id: string): Garment | undefined {
  return garments.find((garment) => garment.id === id);
}
