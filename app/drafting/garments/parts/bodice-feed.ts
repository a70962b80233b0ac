import type { Mm } from '../../../body';
import type { Look } from '../../rows/names';
import type { Sizes } from '../../sizes/maker';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { drawnTrunk } from '../../sizes/trunk';
import type { Wearer } from '../../sizes/wearer';
import { dartFeed } from './dart';
import type { Side, Top } from './top';

type Lapping<C> = { readonly choices: C; readonly wearer: Pick<Wearer, 'scale'> };
type Trunked = { readonly sizes: Parameters<typeof drawnTrunk>[0] };

/** What a front or back takes from the finished sizes; a lining, which has no pocket, the same. */
export function bodiceFeed<C extends object>({ slit, zipped }: Top<C>, side: Side, open: boolean) {
  return {
    neckDrop: `${side}NeckDrop`,
    chestHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].chest,
    tummyHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].tummy,
    hemHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].hem,
    sideGather: `${side}Gather`,
    centreLength: `${side}Length`,
    neckShare: `${side}NeckKept`,
    slitLength: side === slit && !open ? (look: Pick<Look, 'slit'>) => look.slit : null,
    past: open ? ({ choices, wearer }: Lapping<C>) => (zipped?.(choices) ? 0 : PAST_CENTRE_MM[wearer.scale]) : null,
    ...(side === 'front' ? dartFeed : {}),
  } as const;
}

type WithSleeve = { readonly sizes: object };
/** What the sleeve's part makes for every top that has such an arm. */
const ofSleeve =
  (name: 'armTurn' | 'armReach' | 'cuffHalf' | 'armRadius') =>
  ({ sizes }: WithSleeve): Mm =>
    (sizes as Sizes<typeof name>)[name];
export const sleeveFeed = {
  armTurn: ofSleeve('armTurn'),
  armReach: ofSleeve('armReach'),
  cuffHalf: ofSleeve('cuffHalf'),
  armRadius: ofSleeve('armRadius'),
};
