import { bib as bibBlock } from '../blocks/bib';
import { assemble } from '../rows/garment';
import { bibSizes } from '../sizes/cape';
import { scrapNeck } from './parts/thick';

const self = (edge: string) => ({ first: [{ piece: 'bib', edge }], second: [{ piece: 'bib', edge }] });

/** A bib of two layers sewn together all round, turned, and closed behind the neck: no ties. */
export const bib = assemble({ id: 'bib', bodies: ['upright'], choices: {}, auto: {} }, [
  {
    needs: (['neck-girth', 'bib-length'] as const).map((measure) => ({ measure })),
    sizes: [bibSizes],
    pieces: [
      {
        name: 'bib',
        copies: 2,
        mirrored: false,
        onFold: true,
        block: bibBlock,
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
      },
    ],
    seams: [
      { name: 'bib-neck', sewn: 2, ...self('top') },
      { name: 'bib-round', sewn: 2, ...self('bottom') },
      { name: 'bib-end', sewn: 2, ...self('side'), cornered: true },
    ],
    notes: [scrapNeck],
    fit: [{ place: 'neck', measure: 'neck-girth', garment: (look) => 2 * look.length('bib', 'top') }],
  },
]);
