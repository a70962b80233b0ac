import { flare } from '../blocks/flare';
import type { Hems } from '../heads/choices';
import { scarfHead } from '../heads/scarf';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { scarfSizes } from '../sizes/cape';
import type { SizesOf } from '../sizes/maker';
import { hemRole } from './parts/hem';

const edges = ['top', 'side', 'bottom'] as const;

type Gives = { readonly size: SizesOf<typeof scarfSizes>; readonly edge: EdgesOf<'scarf', typeof flare> };
type Names = Gives & { readonly choices: Hems };

export const scarf = assemble(scarfHead, [
  part<{ choices: Hems; size: never; edge: never }, Gives>({
    sizes: [scarfSizes],
    pieces: [
      piece<Names>()('scarf', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        narrowHem: true,
        sizes: { flareTop: 'scarfHalf', flareBottom: 'scarfHalf', flareHeight: 'scarfLong' },
        roles: (choices) => ({
          top: hemRole(choices),
          side: hemRole(choices),
          bottom: hemRole(choices),
          centre: 'fold',
        }),
      }),
    ],
    seams: edges.map((edge) => ({
      name: `scarf-${edge}`,
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'scarf', edge }],
      second: [],
    })),
  }),
]);
