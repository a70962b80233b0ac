import { flare } from '../../blocks/flare';
import type { Straps } from '../../heads/choices';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { bibFrontSizes } from '../../sizes/bib-front';
import type { SizesOf } from '../../sizes/maker';
import type { LegGives } from './leg-names';

type Takes = {
  readonly choices: Straps;
  readonly size: 'hip' | 'legHalfHip' | 'legRaised';
  readonly edge: LegGives['edge'];
};
type Gives = {
  readonly size: SizesOf<typeof bibFrontSizes>;
  readonly edge: EdgesOf<'bib-front' | 'strap', typeof flare>;
};
type Names = {
  readonly choices: Straps;
  readonly size: Takes['size'] | Gives['size'];
  readonly edge: Takes['edge'] | Gives['edge'];
};

const self = (edge: 'top' | 'side') =>
  ({
    sewn: 2,
    first: [{ piece: 'bib-front', edge }],
    second: [{ piece: 'bib-front', edge }],
  }) as const;

/** Two layers sewn to each other and turned, stitched inside the front of a waist; straps from inside the back that close on it. */
export const bibFrontPart = part<Takes, Gives>({
  sizes: [bibFrontSizes],
  pieces: [
    piece<Names>()('bib-front', flare, {
      copies: 2,
      mirrored: false,
      onFold: true,
      sizes: { flareTop: 'bibHalf', flareBottom: 'bibHalf', flareHeight: 'bibHigh' },
      roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
    }),
    piece<Names>()('strap', flare, {
      copies: 2,
      mirrored: false,
      onFold: false,
      sizes: { flareTop: 'strapWidth', flareBottom: 'strapWidth', flareHeight: 'strapLength' },
      roles: () => ({ top: 'seam', side: 'opening', bottom: 'closure', centre: 'opening' }),
    }),
  ],
  seams: [
    { name: 'bib-front-top', ...self('top') },
    { name: 'bib-front-side', ...self('side') },
    {
      name: 'strap-long',
      sewn: 2,
      kind: 'folded',
      first: [
        { piece: 'strap', edge: 'side' },
        { piece: 'strap', edge: 'centre' },
      ],
      second: [],
    },
    {
      name: 'strap-end',
      sewn: 2,
      kind: 'folded',
      // How far it laps over the bib is tried on: it hangs from the waist by then.
      after: () => ['strap-on-waist', 'bib-on-waist'],
      first: [{ piece: 'strap', edge: 'bottom' }],
      second: [],
    },
    {
      name: 'bib-on-waist',
      sewn: 2,
      kind: 'laid',
      after: () => ['bib-front-top', 'bib-front-side', 'waist-casing', 'waist-facing-inside'],
      first: [{ piece: 'leg', edge: 'bib-place' }],
      second: [{ piece: 'bib-front', edge: 'bottom' }],
    },
    {
      name: 'strap-on-waist',
      sewn: 2,
      kind: 'laid',
      after: () => ['strap-long', 'waist-casing', 'waist-facing-inside'],
      first: [{ piece: 'leg', edge: 'strap-place' }],
      second: [{ piece: 'strap', edge: 'top' }],
    },
  ],
  notions: [{ kind: 'closure', place: 'strap-bib', count: 2, length: ({ sizes }) => sizes.strapWidth }],
});
