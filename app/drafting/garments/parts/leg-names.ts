import type { gusset } from '../../blocks/gusset';
import type { leg } from '../../blocks/leg';
import type { legTube } from '../../blocks/leg-tube';
import type { Gussets, Hems, LegCount, Tails, Trousers, Waists } from '../../heads/choices';
import type { EdgesOf } from '../../rows/piece-row';
import type { SizesOf } from '../../sizes/maker';
import type { trouserSizes } from '../../sizes/trousers';

export type LegChoices = Trousers & LegCount & Gussets & Tails & Waists & Hems;
export type LegGives = {
  readonly size: SizesOf<typeof trouserSizes>;
  readonly edge: EdgesOf<'leg', typeof leg | typeof legTube> | EdgesOf<'gusset', typeof gusset>;
};
export type LegNames = LegGives & { readonly choices: LegChoices };

export const hasLegs = ({ legs }: LegCount) => legs !== 'tube';
export const isTube = ({ legs }: LegCount) => legs === 'tube';
export const hasGusset = ({ legs, gusset: chosen }: LegCount & Gussets) => legs !== 'tube' && chosen === 'diamond';
export const leavesTail = ({ tail }: Tails) => tail === 'open' || tail === 'waist';
export const isDrawnIn = ({ hem }: Hems) => hem === 'casing';
/** Sewn to a bodice, it opens behind from the waist down. */
export const isHung = ({ waist }: Waists) => waist === 'bodice';

/** From the waist down to the tail the back opens, and closes above it by edges that lap; on a bodice its own opening runs on so far. */
export const lapsAtTail = ({ tail, waist }: Tails & Waists) => tail === 'waist' && waist !== 'bodice';

/** Half the waist, from front to back. */
export const legWaist = [{ piece: 'leg', edge: 'waist' }] as const;

/** A back that rises more than this, of the width it rises over, makes the waist too steep to be turned. */
export const STEEPEST_TURNED = 0.16;
