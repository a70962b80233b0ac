import type { Sleeves, Wrists } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { only } from '../../rows/part';
import { WRIST_RIB_MM } from '../../sizes/scale';
import { ribPart } from './rib';
import { hasSleeve, isInOne, isPuffed } from './sleeve-match';
import type { Sides } from './top';

type Cuff = RefTo<Extract<Sides, 'front.cuff' | 'back.cuff'> | 'sleeve.cuff'>;

/** A band of rib ends it. */
export const isRibbed = (choices: Pick<Sleeves, 'sleeve'> & Wrists): boolean =>
  !isPuffed(choices) && choices.wrist === 'rib';

/** A band of rib round each wrist: sewn on while the sleeve lies flat, closed with it in one seam. */
export const ribbedWristPart = only(
  (choices: Sleeves & Wrists) => hasSleeve(choices) && isRibbed(choices),
  ribPart<Sleeves & Wrists, Cuff, 'cuff-rib'>('cuff-rib', {
    edge: (choices) =>
      isInOne(choices)
        ? // Over the top of the arm, which is sewn before it: the rib's own ends lie at the underarm.
          [
            { piece: 'front', edge: 'cuff', back: true },
            { piece: 'back', edge: 'cuff' },
          ]
        : [{ piece: 'sleeve', edge: 'cuff', back: true }],
    closed: () => true,
    ends: () => 'back',
    high: WRIST_RIB_MM,
    rings: 2,
    on: 'underarm',
  }),
);
