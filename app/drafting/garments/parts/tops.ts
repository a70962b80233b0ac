import type { Hems, Necks, Opens, Sleeves } from '../../heads/choices';
import { armOf, type Side, type Top } from './top';

/** A lining, or the neck's own facing, faces a slit by itself. */
export const isFacedInside = ({ neck }: Necks) => neck === 'lined' || neck === 'faced';
export const isBoundAtNeck = ({ neck }: Necks) => neck === 'bound';
export const isBandedAtNeck = ({ neck }: Necks) => neck === 'band';
export const isLinedAtNeck = ({ neck }: Necks) => neck === 'lined';

/** A top with a choice of sleeves and of necks, and a hem of its own. */
export const sleevedTop = (slit: Side): Top<Sleeves & Necks & Opens & Hems> => ({
  arm: armOf,
  lined: isLinedAtNeck,
  neckEndBound: isBoundAtNeck,
  neckBanded: isBandedAtNeck,
  waisted: false,
  slit,
});
