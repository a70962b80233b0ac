import { bonnetBack, bonnetFront } from '../blocks/bonnet';
import { flare } from '../blocks/flare';
import { slitFacing } from '../blocks/slit-facing';
import { bonnetHead } from '../heads/bonnet';
import type { Dressed, HatEars } from '../heads/choices';
import { assemble } from '../rows/garment';
import type { Look, RefTo } from '../rows/names';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { bonnetSizes } from '../sizes/bonnet';
import type { SizesOf } from '../sizes/maker';
import { bindingPart } from './parts/binding';
import { fastenedPart } from './parts/fastened';
import { thickness } from './parts/thick';

type Gives = {
  readonly size: SizesOf<typeof bonnetSizes>;
  readonly edge:
    | EdgesOf<'bonnet-front', typeof bonnetFront>
    | EdgesOf<'bonnet-back', typeof bonnetBack>
    | EdgesOf<'chin-strap', typeof flare>
    | EdgesOf<'ear-facing', typeof slitFacing>;
};
type Asked = HatEars & Dressed;
type Names = Gives & { readonly choices: Asked };

const opens = ({ hatEars }: HatEars) => hatEars === 'open';
/** Ribbons are sewn to the bonnet itself and tied under the chin, in place of straps that lap. */
const isTied = ({ closedBy }: Asked) => closedBy === 'ties';
const isStrapped = (choices: Asked) => !isTied(choices);
/** A slit's facing reaches this far above it, mm. */
const FACING_ABOVE_MM = 15;
/** A slit shorter than an ear asks for by this much is said, mm. */
const MISSING_MM = 1;

const neck = (): RefTo<'bonnet-front.neck' | 'bonnet-back.neck'>[] => [
  { piece: 'bonnet-front', edge: 'neck' },
  { piece: 'bonnet-back', edge: 'neck' },
];
const ear =
  (size: 'earFrom' | 'earLong') =>
  ({ choices, sizes }: Look<Names>) =>
    opens(choices) ? sizes[size] : null;

export const bonnet = assemble(bonnetHead, [
  fastenedPart,
  part<{ choices: Asked; size: never; edge: never }, Gives>({
    sizes: [bonnetSizes],
    pieces: [
      piece<Names>()('bonnet-front', bonnetFront, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: { earFrom: ear('earFrom'), earLong: ear('earLong') },
        roles: () => ({ face: 'hem', neck: 'seam', back: 'seam', centre: 'fold' }),
        cuts: ['ear'],
      }),
      piece<Names>()('bonnet-back', bonnetBack, {
        copies: 1,
        mirrored: false,
        onFold: true,
        roles: () => ({ crown: 'seam', neck: 'seam', centre: 'fold' }),
        back: true,
      }),
      piece<Names>()('chin-strap', flare, {
        copies: 2,
        mirrored: false,
        onFold: false,
        sizes: { flareTop: 'strapWidth', flareBottom: 'strapWidth', flareHeight: 'strapLength' },
        roles: () => ({ top: 'seam', side: 'opening', bottom: 'closure', centre: 'opening' }),
        when: isStrapped,
      }),
      piece<Names>()('ear-facing', slitFacing, {
        copies: 2,
        mirrored: false,
        onFold: true,
        sizes: { slitLength: 'earLong', slitAbove: FACING_ABOVE_MM },
        roles: () => ({ top: 'edge', side: 'edge', bottom: 'edge', centre: 'fold' }),
        cuts: ['slit'],
        when: opens,
      }),
    ],
    seams: [
      {
        name: 'ear-slit',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'bonnet-front', edge: 'ear', times: 2 }],
        second: [{ piece: 'ear-facing', edge: 'slit', times: 2 }],
        when: opens,
      },
      { name: 'bonnet-face', sewn: 2, kind: 'folded', first: [{ piece: 'bonnet-front', edge: 'face' }], second: [] },
      {
        name: 'bonnet-crown',
        sewn: 2,
        first: [{ piece: 'bonnet-back', edge: 'crown' }],
        second: [{ piece: 'bonnet-front', edge: 'back', back: true }],
        longer: 'gathered',
      },
      {
        name: 'chin-strap-long',
        sewn: 2,
        kind: 'folded',
        first: [
          { piece: 'chin-strap', edge: 'side' },
          { piece: 'chin-strap', edge: 'centre' },
        ],
        second: [],
        when: isStrapped,
      },
      {
        name: 'chin-strap-end',
        sewn: 2,
        kind: 'folded',
        // How far two ends lap is tried on: they hang from the bonnet by then.
        after: () => ['chin-strap'],
        first: [{ piece: 'chin-strap', edge: 'bottom' }],
        second: [],
        when: isStrapped,
      },
      {
        name: 'chin-strap',
        sewn: 2,
        kind: 'laid',
        after: () => ['chin-strap-long', 'bonnet-face', 'bonnet-binding-inside'],
        first: [{ piece: 'bonnet-front', edge: 'strap' }],
        second: [{ piece: 'chin-strap', edge: 'top' }],
        when: isStrapped,
      },
    ],
    unsuited: [
      { choice: 'hatEars', from: 'auto', to: 'open', when: ({ ears }) => ears !== 'none' },
      { choice: 'hatEars', from: 'open', to: 'covered', code: 'no-ears', when: ({ ears }) => ears === 'none' },
    ],
    notes: [
      { code: 'bonnet-thick', measures: [], told: thickness },
      {
        code: 'ear-slit-short',
        measures: ['ear-base', 'ear-girth', 'ear-inset'],
        told: ({ sizes: { earMissing, earLong } }) =>
          earMissing > MISSING_MM ? { by: earMissing, slit: earLong } : null,
        when: opens,
      },
    ],
    fit: [{ place: 'over-head', measure: 'over-head', garment: ({ sizes }) => sizes.bonnetOver }],
    notions: [
      { kind: 'closure', place: 'chin-strap-end', length: ({ sizes }) => sizes.strapWidth, when: isStrapped },
      // A pair of ribbons, one at each corner of the face's edge.
      { kind: 'closure', place: 'bonnet-face', length: () => 0, when: isTied },
    ],
  }),
  bindingPart('bonnet-binding', { edge: neck, closed: () => false, ends: () => 'front', hollow: () => false }),
]);
