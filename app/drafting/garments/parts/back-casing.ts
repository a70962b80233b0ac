import { flare } from '../../blocks/flare';
import { only, type Part } from '../../rows/garment';
import { isRound } from './band';

/** Folded lengthwise, it holds a 6 mm elastic with 8 mm to turn and stitch. */
const CUT_MM = 28;

/** Behind a half circle the skirt ends in a strip that holds an elastic: a round or flared edge cannot be turned into one. */
export const backCasingPart: Part = only(isRound, {
  pieces: [
    {
      name: 'back-casing',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: flare,
      sizes: { flareTop: 'backCasing', flareBottom: 'backCasing', flareHeight: 'backCasingCut', flareOpen: 'notOpen' },
      takes: (look) => ({ backCasing: look.length('skirt-back', 'top'), backCasingCut: CUT_MM }),
      roles: () => ({ top: 'seam', side: 'opening', bottom: 'seam', centre: 'fold' }),
      back: true,
    },
  ],
  seams: [
    {
      name: 'back-casing',
      sewn: 2,
      first: [{ piece: 'skirt-back', edge: 'top' }],
      second: [{ piece: 'back-casing', edge: 'top' }],
      cornered: true,
    },
    {
      name: 'back-casing-inside',
      sewn: 2,
      kind: 'laid',
      first: [{ piece: 'back-casing', edge: 'top' }],
      second: [{ piece: 'back-casing', edge: 'bottom', back: true }],
    },
  ],
});
