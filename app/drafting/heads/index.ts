/**
 * The heads of all garments: for whom, what may be chosen, what is measured. Plain data, light to load: no block, no size and
 * no seam ever lives here. How a garment is made stands in garments/, under the same name.
 */
import { apronHead } from './apron';
import { bibHead } from './bib';
import { bonnetHead } from './bonnet';
import { bowTieHead } from './bow-tie';
import { capeHead } from './cape';
import { coatHead } from './coat';
import { dressHead } from './dress';
import { dungareesHead } from './dungarees';
import { fittedCoatHead } from './fitted-coat';
import { hatHead } from './hat';
import type { Head } from './head';
import { hoodedTopHead } from './hooded-top';
import { jacketHead } from './jacket';
import { nightshirtHead } from './nightshirt';
import { pantsHead } from './pants';
import { romperHead } from './romper';
import { scarfHead } from './scarf';
import { simpleTopHead } from './simple-top';
import { skirtHead } from './skirt';
import { sleepingBagHead } from './sleeping-bag';
import { socksHead } from './socks';
import { tankHead } from './tank';
import { teeHead } from './tee';
import { trousersHead } from './trousers';
import { tubeDressHead } from './tube-dress';
import { tunicHead } from './tunic';
import { vestHead } from './vest';
import { wristWarmersHead } from './wrist-warmers';

export type { Choice, Choices, Value } from './choice';
export type { Head } from './head';
export { type Offered, offered } from './offered';

/** In the order they are offered, a line each. */
const listed = [
  hoodedTopHead,
  jacketHead,
  teeHead,
  simpleTopHead,
  tankHead,
  nightshirtHead,
  dressHead,
  tubeDressHead,
  skirtHead,
  trousersHead,
  dungareesHead,
  romperHead,
  pantsHead,
  coatHead,
  fittedCoatHead,
  tunicHead,
  hatHead,
  bonnetHead,
  capeHead,
  apronHead,
  bibHead,
  bowTieHead,
  scarfHead,
  wristWarmersHead,
  socksHead,
  vestHead,
  sleepingBagHead,
] as const;

export type GarmentId = (typeof listed)[number]['id'];

// The rows read each their own choices, by name; who lists all garments reads none.
export const heads = listed as unknown as readonly (Head & { readonly id: GarmentId })[];
