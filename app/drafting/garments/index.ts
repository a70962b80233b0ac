/** The garments, one file each: data only. Nothing is computed here; the pipeline in drafting/ reads these rows. */

import { type GarmentId, heads } from '../heads';
import type { Garment } from '../rows/garment';
import { apron } from './apron';
import { bib } from './bib';
import { bonnet } from './bonnet';
import { bowTie } from './bow-tie';
import { cape } from './cape';
import { coat } from './coat';
import { dress } from './dress';
import { dungarees } from './dungarees';
import { fittedCoat } from './fitted-coat';
import { hat } from './hat';
import { hoodedTop } from './hooded-top';
import { jacket } from './jacket';
import { nightshirt } from './nightshirt';
import { pants } from './pants';
import { romper } from './romper';
import { scarf } from './scarf';
import { simpleTop } from './simple-top';
import { skirt } from './skirt';
import { sleepingBag } from './sleeping-bag';
import { socks } from './socks';
import { tank } from './tank';
import { tee } from './tee';
import { trousers } from './trousers';
import { tubeDress } from './tube-dress';
import { tunic } from './tunic';
import { vest } from './vest';
import { wristWarmers } from './wrist-warmers';

export type { Choice } from '../heads';
export { active, type Garment } from '../rows/garment';
export { allowanceRoles } from '../sizes/allowances';
export { type Cloth, cloths } from '../sizes/cloths';
export { fitIds, fits } from '../sizes/ease';

/** How each garment is made, by its head's name: one that is missing does not compile. */
const made: Readonly<Record<GarmentId, Garment>> = {
  'hooded-top': hoodedTop,
  jacket,
  tee,
  'simple-top': simpleTop,
  tank,
  nightshirt,
  dress,
  'tube-dress': tubeDress,
  skirt,
  trousers,
  dungarees,
  romper,
  pants,
  coat,
  'fitted-coat': fittedCoat,
  tunic,
  hat,
  bonnet,
  cape,
  apron,
  bib,
  'bow-tie': bowTie,
  scarf,
  'wrist-warmers': wristWarmers,
  socks,
  vest,
  'sleeping-bag': sleepingBag,
};

/** In the order of their heads. */
export const garments: readonly Garment[] = heads.map(({ id }) => made[id]);

export function findGarment(id: string): Garment | undefined {
  return garments.find((garment) => garment.id === id);
}
