import { USUAL_CASING_MM } from '../../../body';
import { flare } from '../../blocks/flare';
import { type Bodices, isRound } from '../../heads/choices';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { elasticFor } from '../../sizes/fastening';

type Takes = { readonly choices: Bodices; readonly size: never; readonly edge: 'skirt-back.top' };
type Gives = { readonly size: never; readonly edge: EdgesOf<'back-casing', typeof flare> };

/** Behind a half circle the skirt ends in a strip that holds an elastic: a round or flared edge cannot be turned into one. */
export const backCasingPart = only(
  isRound,
  part<Takes, Gives>({
    pieces: [
      piece<Takes>()('back-casing', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: (look) => look.length('skirt-back.top'),
          flareBottom: (look) => look.length('skirt-back.top'),
          // Folded lengthwise it holds the elastic, with room to turn and stitch.
          flareHeight: ({ wearer }) => 2 * USUAL_CASING_MM[wearer.scale],
        },
        roles: () => ({ top: 'seam', side: 'opening', bottom: 'seam', centre: 'fold' }),
        back: true,
      }),
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
        name: 'back-casing-end',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'back-casing', edge: 'side' }],
        second: [],
      },
      {
        name: 'back-casing-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'back-casing', edge: 'top' }],
        second: [{ piece: 'back-casing', edge: 'bottom', back: true }],
      },
    ],
    notions: [
      { kind: 'elastic', place: 'back-casing', length: ({ wearer }) => elasticFor(wearer.of('waist-girth') / 2) },
    ],
  }),
);
