import { bib as bibBlock } from '../blocks/bib';
import { bibHead } from '../heads/bib';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { bibSizes } from '../sizes/cape';
import type { SizesOf } from '../sizes/maker';
import { fastenedPart } from './parts/fastened';
import { scrapNeck } from './parts/thick';

type Gives = { readonly size: SizesOf<typeof bibSizes>; readonly edge: EdgesOf<'bib', typeof bibBlock> };
type Names = Gives & { readonly choices: object };

const self = <E extends string>(edge: E) =>
  ({ first: [{ piece: 'bib', edge }], second: [{ piece: 'bib', edge }] }) as const;

export const bib = assemble(bibHead, [
  fastenedPart,
  part<{ choices: object; size: never; edge: never }, Gives>({
    sizes: [bibSizes],
    pieces: [
      piece<Names>()('bib', bibBlock, {
        copies: 2,
        mirrored: false,
        onFold: true,
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', gap: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      { name: 'bib-neck', sewn: 2, ...self('top') },
      { name: 'bib-round', sewn: 2, ...self('bottom') },
      { name: 'bib-end', sewn: 2, ...self('side'), cornered: true },
      { name: 'bib-gap', sewn: 2, kind: 'laid', ...self('gap') },
    ],
    notes: [scrapNeck],
    fit: [{ place: 'neck', measure: 'neck-girth', garment: (look) => 2 * look.length('bib.top') }],
    notions: [{ kind: 'closure', place: 'bib-end', length: (look) => look.length('bib.side') }],
  }),
]);
