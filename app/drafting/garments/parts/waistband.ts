import { waistband } from '../../blocks/waistband';
import type { Skirts } from '../../heads/choices';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { isElastic, isPleated, type SkirtGives, skirtWaist } from './skirt';

type Gives = { readonly size: never; readonly edge: EdgesOf<'waistband', typeof waistband> };
type Takes = { readonly choices: Skirts; readonly size: SkirtGives['size']; readonly edge: SkirtGives['edge'] };

const onBand = (choices: Skirts) => !isElastic(choices);

/** A straight waistband, folded lengthwise, that laps at the centre back. */
export const waistbandPart = part<Takes, Gives>({
  pieces: [
    piece<Takes>()('waistband', waistband, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: {
        bandDeep: ({ sizes }) => 2 * sizes.waistbandHeight,
        bandPast: ({ wearer }) => PAST_CENTRE_MM[wearer.scale],
      },
      roles: () => ({ top: 'seam', 'top-end': 'opening', side: 'closure', bottom: 'seam', centre: 'fold' }),
      when: onBand,
    }),
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
  fit: [{ place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.waist }],
  notions: [{ kind: 'closure', place: 'waistband-end', length: ({ sizes }) => sizes.waistbandHeight, when: onBand }],
});
