import type { hoodSide, hoodStrip } from '../../blocks/hood';
import { slitFacing } from '../../blocks/slit-facing';
import type { Ears, Hoods } from '../../heads/choices';
import { earNeeds } from '../../heads/needed';
import type { Look, RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { earSizes, type hoodSizes } from '../../sizes/hood';
import type { SizesOf } from '../../sizes/maker';

const areOpen = ({ ears }: Ears) => ears === 'open';
export const inSeam = (choices: Hoods & Ears) => areOpen(choices) && choices.hood === 'three';
export const inSlit = (choices: Hoods & Ears) => areOpen(choices) && choices.hood === 'two';

/** The edges and lines of a hood and of the strip between its sides. */
export type HoodEdge = EdgesOf<'hood', typeof hoodSide> | EdgesOf<'strip', typeof hoodStrip>;

/** The edges a seam over the head is made of, from the face to the nape: parted by an ear's opening. */
export const crown = (choices: Hoods & Ears): RefTo<HoodEdge>[] =>
  (inSeam(choices) ? (['crown-front', 'ear', 'crown-back'] as const) : (['crown'] as const)).map((edge) => ({
    piece: 'hood',
    edge,
  }));
/** Round a slit inside a piece, its facing reaches this far above it. */
const FACING_ABOVE_MM = 15;
/** An ear bends this far to come through an opening beside it. */
const BENDS_MM = 12;

type Gives = { readonly size: SizesOf<typeof earSizes>; readonly edge: EdgesOf<'ear-facing', typeof slitFacing> };
type Takes = { readonly choices: Hoods & Ears; readonly size: SizesOf<typeof hoodSizes>; readonly edge: HoodEdge };
type Names = {
  readonly choices: Takes['choices'];
  readonly size: Takes['size'] | Gives['size'];
  readonly edge: HoodEdge;
};

/** Ears come through the hood: in a strip's seams, left open over them, or through faced slits. */
export const earsPart = only(
  areOpen,
  part<Takes, Gives>({
    sizes: [earSizes],
    passages: [{ measure: 'ear-girth', through: 'ear', gives: ({ ear }) => 2 * ear }],
    pieces: [
      piece<Names>()('ear-facing', slitFacing, {
        copies: 2,
        mirrored: false,
        onFold: true,
        sizes: { slitLength: (look) => look.length('hood.ear'), slitAbove: FACING_ABOVE_MM },
        roles: () => ({ top: 'edge', side: 'edge', bottom: 'edge', centre: 'fold' }),
        cuts: ['slit'],
        when: inSlit,
      }),
    ],
    seams: [
      {
        name: 'ear-slit',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'hood', edge: 'ear', times: 2 }],
        second: [{ piece: 'ear-facing', edge: 'slit', times: 2 }],
        when: inSlit,
      },
      ...(['front', 'back'] as const).map((side) => ({
        name: `hood-crown-${side}`,
        sewn: 2 as const,
        first: [{ piece: 'strip', edge: `side-${side}` } as const],
        second: [{ piece: 'hood', edge: `crown-${side}` } as const],
        when: inSeam,
      })),
      {
        name: 'ear-edge',
        sewn: 2,
        kind: 'folded',
        first: [
          { piece: 'hood', edge: 'ear' },
          { piece: 'strip', edge: 'ear' },
        ],
        second: [],
        when: inSeam,
      },
    ],
    unsuited: [
      { choice: 'ears', from: 'open', to: 'covered', code: 'ears-none-instead', when: ({ ears }) => ears === 'none' },
    ],
    instead: [
      {
        choice: 'ears',
        from: 'open',
        to: 'covered',
        code: 'ears-covered-instead',
        check: earNeeds,
        when: (look) => look.length('hood.ear') < look.sizes.ear - 0.5,
      },
    ],
    notes: [{ code: 'ears-beside-seam', measures: ['ear-inset'], told: besideSeam, when: inSeam }],
  }),
);

/** How far the ears lie from the seam they come through, where that is farther than an ear bends. */
function besideSeam({ sizes, wearer }: Look<Names>): { readonly off: number } | null {
  const off = wearer.of('ear-inset') + wearer.of('ear-base') / 2 - sizes.strip / 2;
  return Math.abs(off) > wearer.of('ear-base') / 2 + BENDS_MM ? { off: Math.abs(off) } : null;
}
