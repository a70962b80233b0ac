import { slitFacing } from '../../blocks/slit-facing';
import type { Part } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
import { isLined } from './bodice';

/** A lining, or the neck's own facing, faces the slit by itself. */
const isFaced = (choices: Choices) => choices.opening === 'slit' && !isLined(choices) && choices.neck !== 'faced';

/** A slit down the centre of one side, faced: for a head that does not pass the neckline. */
export const slitPart = (side: 'front' | 'back'): Part => ({
  pieces: [
    {
      name: 'slit-facing',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: slitFacing,
      roles: () => ({ top: 'opening', side: 'edge', bottom: 'edge', centre: 'fold' }),
      cuts: ['slit'],
      when: isFaced,
    },
  ],
  seams: [
    {
      name: 'slit',
      sewn: 1,
      kind: 'laid',
      first: [{ piece: side, edge: 'slit', times: 2 }],
      second: [{ piece: 'slit-facing', edge: 'slit', times: 2 }],
      when: isFaced,
    },
  ],
});
