/** The garments, one file each: data only. Nothing is computed here; the pipeline in drafting/ reads these rows. */

import type { Garment } from '../rows/garment';
import { bib } from './bib';
import { cape } from './cape';
import { dress } from './dress';
import { hoodedTop } from './hooded-top';
import { nightshirt } from './nightshirt';
import { scarf } from './scarf';
import { skirt } from './skirt';
import { tank } from './tank';
import { tee } from './tee';
import { wristWarmers } from './wrist-warmers';

export type { Choice } from '../heads';
export { active, type Garment } from '../rows/garment';
export { allowanceRoles } from '../sizes/allowances';
export { type Cloth, cloths } from '../sizes/cloths';
export { fitIds, fits } from '../sizes/ease';

export const garments: readonly Garment[] = [
  // In the order they are offered, a line each.
  hoodedTop,
  tee,
  tank,
  nightshirt,
  dress,
  skirt,
  cape,
  bib,
  scarf,
  wristWarmers,
];

export function findGarment(id: string): Garment | undefined {
  return garments.find((garment) => garment.id === id);
}
