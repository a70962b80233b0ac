import type { bodiceSizes, fullestSizes } from '../../sizes/bodice';
import type { SizesOf } from '../../sizes/maker';
import type { neckSizes } from '../../sizes/neck';
import type { NeckEdge, Sides } from './top';

export type BodiceGives = {
  readonly size: SizesOf<typeof neckSizes> | SizesOf<typeof bodiceSizes> | SizesOf<typeof fullestSizes>;
  /** A sleeve's neck is there only where the top has raglan sleeves, and only then asked for. */
  readonly edge: Sides | NeckEdge;
};
/** All that a bodice's own rows speak of. */
export type BodiceNames<C extends object> = {
  readonly choices: C;
  readonly size: BodiceGives['size'];
  readonly edge: BodiceGives['edge'];
};
