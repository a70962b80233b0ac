import { RAGLAN_DEEPER_MM } from '../../curves/side';
import type { bodiceSizes, fullestSizes } from '../../sizes/bodice';
import { maker, type SizesOf } from '../../sizes/maker';
import type { neckSizes } from '../../sizes/neck';
import type { Wearer } from '../../sizes/wearer';
import type { NeckEdge, Sides, Top } from './top';

/** How much lower than a sleeve's set in an underarm lies. */
export const underarmSizes = <C extends object>({ arm }: Pick<Top<C>, 'arm'>) =>
  maker([], ['underarmDeeper'], ({ choices }: Wearer<C>) => ({
    sizes: { underarmDeeper: arm(choices) === 'raglan' ? RAGLAN_DEEPER_MM : 0 },
  }));

export type BodiceGives = {
  readonly size:
    | SizesOf<typeof neckSizes>
    | SizesOf<typeof bodiceSizes>
    | SizesOf<typeof fullestSizes>
    | SizesOf<ReturnType<typeof underarmSizes>>;
  /** A sleeve's neck is there only where the top has raglan sleeves, and only then asked for. */
  readonly edge: Sides | NeckEdge;
};
/** All that a bodice's own rows speak of. */
export type BodiceNames<C extends object> = {
  readonly choices: C;
  readonly size: BodiceGives['size'];
  readonly edge: BodiceGives['edge'];
};
