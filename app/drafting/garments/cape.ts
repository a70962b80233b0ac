import { flare } from '../blocks/flare';
import { capeHead } from '../heads/cape';
import type { Hems, Hoods } from '../heads/choices';
import { assemble } from '../rows/garment';
import type { RefTo } from '../rows/names';
import { only, part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { capeSizes } from '../sizes/cape';
import { CLOTH_WIDE_MM, sectorReach } from '../sizes/fullness';
import type { SizesOf } from '../sizes/maker';
import { bindingPart } from './parts/binding';
import { earsPart } from './parts/ears';
import { hemRole } from './parts/hem';
import { hoodPart } from './parts/hood';
import { scrapNeck } from './parts/thick';

type Gives = { readonly size: SizesOf<typeof capeSizes>; readonly edge: EdgesOf<'cape', typeof flare> };
type Names = Gives & { readonly choices: Hems };

const hooded = ({ hood }: Hoods) => hood !== 'none';
const bare = (choices: Hoods) => !hooded(choices);
/** From centre front to centre back: the fold is at the back. */
const neckline = (): RefTo<'cape.top'>[] => [{ piece: 'cape', edge: 'top', back: true }];

const capePart = part<{ choices: Hems; size: never; edge: never }, Gives>({
  sizes: [capeSizes],
  pieces: [
    piece<Names>()('cape', flare, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: { flareTop: 'capeNeck', flareBottom: 'capeHem', flareHeight: 'capeLength' },
      roles: (choices) => ({ top: 'seam', side: 'hem', bottom: hemRole(choices), centre: 'fold' }),
      back: true,
    }),
  ],
  seams: [
    { name: 'cape-front', sewn: 2, kind: 'folded', first: [{ piece: 'cape', edge: 'side' }], second: [] },
    { name: 'cape-hem', sewn: 1, kind: 'folded', first: [{ piece: 'cape', edge: 'bottom', times: 2 }], second: [] },
  ],
  notes: [
    scrapNeck,
    {
      code: 'wider-than-cloth',
      measures: ['cape-length'],
      told: ({ sizes: { capeNeck, capeHem, capeLength } }) => {
        const width = 2 * sectorReach(capeNeck, capeHem, capeLength);
        return width > CLOTH_WIDE_MM ? { width, cloth: CLOTH_WIDE_MM } : null;
      },
    },
  ],
  fit: [
    { place: 'neck', measure: 'neck-girth', garment: (look) => 2 * look.length('cape.top') },
    { place: 'over-arms', measure: 'over-arms-girth', garment: (look) => 2 * look.length('cape.bottom') },
  ],
  // A square of it at the neck.
  notions: [{ kind: 'closure', place: 'cape-front', length: () => 0 }],
});

export const cape = assemble(capeHead, [
  capePart,
  only(hooded, hoodPart({ neckline, opensBehind: () => false })),
  only(hooded, earsPart),
  only(bare, bindingPart('binding', { edge: neckline, closed: () => false, ends: () => 'front' })),
]);
