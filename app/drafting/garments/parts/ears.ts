import { slitFacing } from '../../blocks/slit-facing';
import type { Ref } from '../../draft-types';
import { type Choice, type Look, only, type Part } from '../../rows/garment';
import { earSizes } from '../../sizes/hood';
import type { Choices } from '../../sizes/wearer';

export const earsChoice = { kind: 'one', of: ['covered', 'open'], fallback: 'covered' } as const satisfies Choice;

const areOpen = (choices: Choices) => choices.ears === 'open';
const inSeam = (choices: Choices) => areOpen(choices) && choices.hood === 'three';
const inSlit = (choices: Choices) => areOpen(choices) && choices.hood === 'two';

/** The edges a seam over the head is made of, from the face to the nape: parted by an ear's opening. */
export const overHead =
  (piece: 'hood' | 'strip', edge: 'crown' | 'side') =>
  (choices: Choices): Ref[] =>
    (inSeam(choices) ? [`${edge}-front`, 'ear', `${edge}-back`] : [edge]).map((each) => ({ piece, edge: each }));

const EARS = ['ear-base', 'ear-girth', 'ear-inset', 'ear-from-face-edge'] as const;
/** Round a slit inside a piece, its facing reaches this far above it. */
const FACING_ABOVE_MM = 15;
/** An ear bends this far to come through an opening beside it. */
const BENDS_MM = 12;

/** Ears come through the hood: in a strip's seams, left open over them, or through faced slits. */
export const earsPart: Part = only(areOpen, {
  needs: EARS.map((measure) => ({ measure })),
  sizes: [earSizes],
  passages: [{ measure: 'ear-girth', through: 'ear', gives: ({ ear = 0 }) => 2 * ear }],
  pieces: [
    {
      name: 'ear-facing',
      copies: 2,
      mirrored: false,
      onFold: true,
      block: slitFacing,
      sizes: { slitLength: 'earFaced' },
      takes: (look) => ({ earFaced: look.length('hood', 'ear'), slitAbove: FACING_ABOVE_MM }),
      roles: () => ({ top: 'edge', side: 'edge', bottom: 'edge', centre: 'fold' }),
      cuts: ['slit'],
      when: inSlit,
    },
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
      first: [{ piece: 'strip', edge: `side-${side}` }],
      second: [{ piece: 'hood', edge: `crown-${side}` }],
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
      check: EARS,
      when: (look) => look.length('hood', 'ear') < (look.sizes.ear ?? 0) - 0.5,
    },
  ],
  notes: [{ code: 'ears-beside-seam', measures: ['ear-inset'], told: besideSeam, when: inSeam }],
});

/** How far the ears lie from the seam they come through, where that is farther than an ear bends. */
function besideSeam({ sizes, wearer }: Look): { readonly off: number } | null {
  const off = wearer.of('ear-inset') + wearer.of('ear-base') / 2 - (sizes.stripFace ?? 0);
  return Math.abs(off) > wearer.of('ear-base') / 2 + BENDS_MM ? { off: Math.abs(off) } : null;
}
