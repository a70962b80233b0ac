import type { legTube } from '../../blocks/leg-tube';
import type { pants } from '../../blocks/pants';
import type { slitFacing } from '../../blocks/slit-facing';
import type { LegCount, Pants, Tails, Waists } from '../../heads/choices';
import type { EdgesOf } from '../../rows/piece-row';
import type { SizesOf } from '../../sizes/maker';
import type { pantsSizes } from '../../sizes/pants';

export type PantsChoices = Pants & LegCount & Tails & Waists;
export type PantsNames = PantsGives & { readonly choices: PantsChoices };
export type PantsGives = {
  readonly size: SizesOf<typeof pantsSizes>;
  readonly edge:
    | EdgesOf<'pants', typeof pants>
    | EdgesOf<'pants-tube', typeof legTube>
    | EdgesOf<'tail-facing', typeof slitFacing>;
};

export const isTube = ({ legs }: LegCount) => legs === 'tube';
export const hasLegs = (choices: PantsChoices) => !isTube(choices);
export const isNappy = (choices: PantsChoices) => hasLegs(choices) && choices.pants === 'nappy';
export const isSewn = (choices: PantsChoices) => hasLegs(choices) && choices.pants === 'pants';
/** Through a slit in the fold behind. */
export const slitsTail = (choices: PantsChoices) => hasLegs(choices) && choices.tail === 'open';
/** From the waist down to the tail the back opens: two halves, sewn together below. */
export const opensToTail = (choices: PantsChoices) => hasLegs(choices) && choices.tail === 'waist';

/** Half the waist, from front to back. */
export const pantsWaist = [
  { piece: 'pants', edge: 'front-waist' },
  { piece: 'pants', edge: 'back-waist' },
] as const;
