import { roundPanel } from '../../blocks/round-panel';
import type { Hems, Wings } from '../../heads/choices';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { ELASTIC_JOIN_MM } from '../../sizes/fastening';
import type { SizesOf } from '../../sizes/maker';
import type { tunicSizes } from '../../sizes/tunic';
import { hemRole } from './hem';
import { wingFeed } from './wings';

type Takes = {
  readonly choices: Hems & Wings;
  readonly size: SizesOf<typeof tunicSizes>;
  readonly edge: never;
};
type Gives = { readonly size: never; readonly edge: EdgesOf<'drawn-front' | 'drawn-back', typeof roundPanel> };
type Names = { readonly choices: Takes['choices']; readonly size: Takes['size']; readonly edge: Gives['edge'] };

const round = (edge: 'top' | 'hem') =>
  [
    { piece: 'drawn-front', edge, ...(edge === 'hem' ? { back: true as const } : {}) },
    { piece: 'drawn-back', edge, ...(edge === 'top' ? { back: true as const } : {}) },
  ] as const;

/** Two straight pieces as wide as the body at its fullest, drawn in round the neck by an elastic: never by a cord. */
export const drawnTunicPart = part<Takes, Gives>({
  passages: [{ measure: 'body-girth', through: 'hem', gives: ({ tummy }) => tummy }],
  pieces: (['drawn-front', 'drawn-back'] as const).map((name) =>
    piece<Names>()(name, roundPanel, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: wingFeed,
      roles: (choices) => ({
        top: 'casing',
        seam: 'seam',
        above: 'seam',
        wing: 'opening',
        below: 'seam',
        hem: hemRole(choices),
        centre: 'fold',
      }),
      ...(name === 'drawn-back' ? { back: true as const } : {}),
    }),
  ),
  seams: [
    { name: 'drawn-neck', sewn: 2, kind: 'folded', first: round('top'), second: [] },
    { name: 'hem', sewn: 2, kind: 'folded', first: round('hem'), second: [] },
  ],
  notes: [{ code: 'tail-lifts-hem', measures: [], told: ({ wearer }) => (wearer.traits.tail ? {} : null) }],
  fit: [
    { place: 'tummy', measure: 'body-girth', garment: ({ sizes }) => sizes.tummy },
    {
      place: 'hem',
      measure: 'hem-girth',
      garment: ({ length }) => 2 * (length('drawn-front.hem') + length('drawn-back.hem')),
      asked: ({ sizes }) => sizes.hem,
      because: () => 'falls-straight',
    },
  ],
  // Shorter than the neck it would creep up a body that narrows there.
  notions: [
    { kind: 'elastic', place: 'drawn-neck', length: ({ wearer }) => wearer.of('neck-girth') + ELASTIC_JOIN_MM },
  ],
});
