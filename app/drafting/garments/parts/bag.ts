import type { Mm } from '../../../body';
import { gapIn } from '../../curves/gap';
import { isOpen, type Opens } from '../../heads/choices';
import type { Look } from '../../rows/names';
import type { Side, Top, TopChoices } from './top';

/** Shell and lining are sewn together at the hem too, and turned out. */
export const bagged =
  <C extends TopChoices>({ lined, waisted }: Top<C>) =>
  (choices: C): boolean =>
    lined(choices) && !waisted && choices.hem === 'turned';

/** Sewn shut at neck, hem and armholes: beside a sleeve the lining's armhole, stitched down last, is room enough. */
export const isShut =
  <C extends TopChoices>(top: Top<C>) =>
  (choices: C): boolean =>
    bagged(top)(choices) && top.arm(choices) === 'bare';

/** Lined and closed before and behind, it could not be turned through its shoulders: they are sewn last. */
export const shouldersLast =
  <C extends TopChoices>({ lined, arm }: Top<C>) =>
  (choices: C): boolean =>
    lined(choices) && arm(choices) === 'bare' && !isOpen('front')(choices) && !isOpen('back')(choices);

/** A bag is turned through the hem of the side that stays on the fold: behind, where both do. */
export const gapSide = ({ opening }: Opens): Side => (opening === 'back' ? 'front' : 'back');
export const turnGap =
  <C extends TopChoices>(top: Top<C>, side: Side) =>
  ({ choices, sizes }: Pick<Look<{ choices: C; size: 'hem'; edge: never }>, 'choices' | 'sizes'>): Mm | null =>
    isShut(top)(choices) && gapSide(choices) === side ? gapIn(sizes.hem) / 2 : null;
