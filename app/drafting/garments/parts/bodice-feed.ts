import type { Mm } from '../../../body';
import type { Hems } from '../../heads/choices';
import type { Look } from '../../rows/names';
import type { Sizes } from '../../sizes/maker';
import { BAND_PAST_MM, PAST_CENTRE_MM } from '../../sizes/scale';
import { drawnTrunk } from '../../sizes/trunk';
import type { Wearer } from '../../sizes/wearer';
import { dartFeed } from './dart';
import { isReady } from './hem';
import type { Side, Top } from './top';

type Lapping<C> = { readonly choices: C; readonly wearer: Pick<Wearer, 'scale'> };
type Trunked = { readonly sizes: Parameters<typeof drawnTrunk>[0] };

/** What a front or back takes from the finished sizes; a lining, which has no pocket, the same. */
export function bodiceFeed<C extends Hems>({ slit, zipped, banded, waisted }: Top<C>, side: Side, open: boolean) {
  const past = ({ choices, wearer }: Lapping<C>): Mm => {
    if (zipped?.(choices)) return 0;
    return banded?.(choices) ? BAND_PAST_MM : PAST_CENTRE_MM[wearer.scale];
  };
  return {
    neckDrop: `${side}NeckDrop`,
    chestHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].chest,
    tummyHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].tummy,
    hemHalf: ({ sizes }: Trunked) => drawnTrunk(sizes)[side].hem,
    sideGather: `${side}Gather`,
    centreLength: `${side}Length`,
    neckShare: `${side}NeckKept`,
    plumbHem: waisted ? null : ({ choices }: { readonly choices: C }) => (isReady(choices) ? 1 : null),
    slitLength: side === slit && !open ? (look: Pick<Look, 'slit'>) => look.slit : null,
    past: open ? past : null,
    ...dartFeed(side),
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
