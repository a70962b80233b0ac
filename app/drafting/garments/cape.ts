import { flare } from '../blocks/flare';
import type { Ref } from '../draft-types';
import { assemble, only, type Part } from '../rows/garment';
import { capeSizes } from '../sizes/cape';
import { CLOTH_WIDE_MM, sectorReach } from '../sizes/fullness';
import type { Choices } from '../sizes/wearer';
import { bindingPart } from './parts/binding';
import { earsChoice, earsPart } from './parts/ears';
import { hemRole } from './parts/hem';
import { hoodPart } from './parts/hood';
import { scrapNeck } from './parts/thick';

const hooded = (choices: Choices) => choices.hood !== 'none';
const bare = (choices: Choices) => !hooded(choices);
/** From centre front to centre back: the fold is at the back. */
const neckline = (): Ref[] => [{ piece: 'cape', edge: 'top', back: true }];

const capePart: Part = {
  needs: (['neck-girth', 'over-arms-girth', 'cape-length'] as const).map((measure) => ({ measure })),
  sizes: [capeSizes],
  pieces: [
    {
      name: 'cape',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: flare,
      sizes: { flareTop: 'capeNeck', flareBottom: 'capeHem', flareHeight: 'capeLength', flareOpen: 'notOpen' },
      roles: (choices) => ({ top: 'seam', side: 'hem', bottom: hemRole(choices), centre: 'fold' }),
      back: true,
    },
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
      told: ({ sizes: { capeNeck = 0, capeHem = 0, capeLength = 1 } }) => {
        const width = 2 * sectorReach(capeNeck, capeHem, capeLength);
        return width > CLOTH_WIDE_MM ? { width, cloth: CLOTH_WIDE_MM } : null;
      },
    },
  ],
  fit: [
    { place: 'neck', measure: 'neck-girth', garment: (look) => 2 * look.length('cape', 'top') },
    { place: 'over-arms', measure: 'over-arms-girth', garment: (look) => 2 * look.length('cape', 'bottom') },
  ],
};

/** A cape that closes at the neck in front, with or without a hood; never with a cord. */
export const cape = assemble(
  {
    id: 'cape',
    bodies: ['upright'],
    choices: {
      hood: { kind: 'one', of: ['auto', 'none', 'two', 'three'], fallback: 'none' },
      ears: earsChoice,
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: { hood: 'two' },
  },
  [
    capePart,
    only(hooded, hoodPart(neckline)),
    only(hooded, earsPart),
    only(bare, bindingPart('binding', { edge: neckline, closed: () => false, ends: () => 'front' })),
  ],
);
