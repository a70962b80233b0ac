import type { Mm } from '../../../body';
import type { flare } from '../../blocks/flare';
import type { earGore, gore } from '../../blocks/gore';
import type { Brims, HatEars } from '../../heads/choices';
import type { Look, RefTo } from '../../rows/names';
import type { EdgesOf } from '../../rows/piece-row';
import { GORES, type hatSizes } from '../../sizes/hat';
import type { SizesOf } from '../../sizes/maker';

export type HatChoices = Brims & HatEars;
export type HatGives = {
  readonly size: SizesOf<typeof hatSizes>;
  readonly edge:
    | EdgesOf<'gore' | 'gore-front' | 'gore-back', typeof gore>
    | EdgesOf<'gore-before' | 'gore-behind', typeof earGore>
    | EdgesOf<'cuff', typeof flare>;
};
type Names = HatGives & { readonly choices: HatChoices };

export const opens = ({ hatEars }: HatEars) => hatEars === 'open' || hatEars === 'down';
/** Below the ears its seams are sewn again. */
export const closesBelow = ({ hatEars }: HatEars) => hatEars === 'open';
export const covers = (choices: HatEars) => !opens(choices);
export const cuffed = ({ brim }: Brims) => brim === 'cuff';
export const brimmed = ({ brim }: Brims) => brim === 'brim';
export const isTurned = ({ brim }: Brims) => brim === 'turned';
export const brimRole = (choices: Brims) => (isTurned(choices) ? 'hem' : 'seam') as 'seam' | 'hem';

/** The brim all the way round, from the centre front where gores differ. */
export const brims = (choices: HatEars): readonly RefTo<HatGives['edge']>[] =>
  opens(choices)
    ? [
        { piece: 'gore-front', edge: 'brim', times: 2 },
        { piece: 'gore-before', edge: 'brim', times: 2 },
        { piece: 'gore-behind', edge: 'brim', times: 2 },
        { piece: 'gore-back', edge: 'brim', times: 2 },
      ]
    : [{ piece: 'gore', edge: 'brim', times: 2 * GORES }];

/** Half of it, from the centre front to the centre back: what is parted at the ears is no ring. */
export const halfBrim: readonly RefTo<HatGives['edge']>[] = [
  { piece: 'gore-front', edge: 'brim', back: true },
  { piece: 'gore-before', edge: 'brim', back: true },
  { piece: 'gore-behind', edge: 'brim' },
  { piece: 'gore-back', edge: 'brim' },
];
export const isParted = ({ hatEars }: HatEars) => hatEars === 'down';

export function halfRound({ choices, length }: Pick<Look<Names>, 'choices' | 'length'>): Mm {
  const round = opens(choices)
    ? 2 * length('gore-front.brim') +
      2 * length('gore-before.brim') +
      2 * length('gore-behind.brim') +
      2 * length('gore-back.brim')
    : 2 * GORES * length('gore.brim');
  return round / 2;
}

/** The brim is round once the gores are; where they stay open down to it, their edges are folded first. */
export const aroundEars = (choices: HatEars) =>
  isParted(choices) ? ['ear-above', 'ear-before', 'ear-behind'] : ['ear-above', 'ear-below'];
