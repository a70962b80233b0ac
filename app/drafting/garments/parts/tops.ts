import type { Hems, Necks, Opens, Sleeves, Wrists } from '../../heads/choices';
import { wristRole } from './hem';
import { armOf, type Side, type Top } from './top';

/** A lining, or the neck's own facing, faces a slit by itself. */
export const isFacedInside = ({ neck }: Necks) => neck === 'lined' || neck === 'faced' || neck === 'in-one';
export const isFacedInOne = ({ neck }: Necks) => neck === 'in-one';
export const isBoundAtNeck = ({ neck }: Necks) => neck === 'bound';
export const isBandedAtNeck = ({ neck }: Necks) => neck === 'band';
export const isLinedAtNeck = ({ neck }: Necks) => neck === 'lined';

/** A top with a choice of sleeves and of necks, and a hem of its own. */
export const sleevedTop = (slit: Side): Top<Sleeves & Wrists & Necks & Opens & Hems> => ({
  arm: armOf,
  lined: isLinedAtNeck,
  neckEndBound: isBoundAtNeck,
  neckBanded: isBandedAtNeck,
  cuff: wristRole,
  waisted: false,
  slit,
});
