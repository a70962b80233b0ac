import { flare } from '../../blocks/flare';
import type { Choices } from '../../sizes/wearer';
import type { Part } from '../garment';
import { isElastic, isPleated, skirtWaist } from './skirt';

const onBand = (choices: Choices) => !isElastic(choices);

/** The band laps this far past the centre back. */
const PAST_MM = 10;

/** A straight waistband, folded lengthwise, that laps at the centre back. */
export const waistbandPart: Part = {
  pieces: [
    {
      name: 'waistband',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: flare,
      sizes: { flareTop: 'bandLong', flareBottom: 'bandLong', flareHeight: 'bandDeep', flareOpen: 'notOpen' },
      takes: ({ sizes }) => ({
        bandLong: sizes.bandHalf ?? 0,
        bandDeep: 2 * (sizes.waistbandHeight ?? 0),
        bandPast: PAST_MM,
      }),
      roles: () => ({ top: 'seam', side: 'closure', bottom: 'opening', centre: 'fold' }),
      when: onBand,
    },
  ],
  seams: [
    {
      name: 'waist',
      sewn: 2,
      first: [{ piece: 'waistband', edge: 'top' }],
      second: skirtWaist,
      longer: (choices) => (isPleated(choices) ? 'pleated' : 'gathered'),
      when: onBand,
    },
    {
      name: 'waistband-end',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'waistband', edge: 'side' }],
      second: [],
      when: onBand,
    },
  ],
  fit: [{ place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.waist ?? 0 }],
};
