import { waistband } from '../../blocks/waistband';
import type { Part } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
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
      block: waistband,
      takes: ({ sizes }) => ({ bandDeep: 2 * (sizes.waistbandHeight ?? 0), bandPast: PAST_MM }),
      roles: () => ({ top: 'seam', 'top-end': 'opening', side: 'closure', bottom: 'seam', centre: 'fold' }),
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
      cornered: true,
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
    {
      name: 'waistband-inside',
      sewn: 2,
      kind: 'laid',
      first: [
        { piece: 'waistband', edge: 'top' },
        { piece: 'waistband', edge: 'top-end' },
      ],
      second: [{ piece: 'waistband', edge: 'bottom', back: true }],
      when: onBand,
    },
  ],
  fit: [{ place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.waist ?? 0 }],
};
