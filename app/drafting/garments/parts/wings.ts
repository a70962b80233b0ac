import type { Wings } from '../../heads/choices';
import type { Look, Names } from '../../rows/names';
import { partNamed } from '../../rows/part';
import type { SizesOf } from '../../sizes/maker';
import type { tunicSizes } from '../../sizes/tunic';
import { wingShare } from '../../sizes/tunic';

export const isWinged = ({ wings }: Wings) => wings !== 'none';
const isPlain = (choices: Wings) => !isWinged(choices);

type Winged = Names & { readonly choices: Wings; readonly size: SizesOf<typeof tunicSizes> };

/** Where a wing comes through the side of a piece; nothing without. */
export const wingFeed = {
  wingFrom: ({ choices, sizes }: Pick<Look<Winged>, 'choices' | 'sizes'>) =>
    isWinged(choices) ? sizes.wingFrom : null,
  wingLong: ({ choices, sizes }: Pick<Look<Winged>, 'choices' | 'sizes'>) =>
    isWinged(choices) ? sizes.wingLong : null,
};

/** A shift of a slit by less than this is no news, and what it is short of, mm. */
const UNSAID_MM = 5;
const MISSING_MM = 1;

/** The sides of two pieces, sewn all along, or above and below a slit whose edges are folded. */
export function wingsPart<Before extends string, Behind extends string>(before: Before, behind: Behind) {
  type Edge = `${Before | Behind}.${'seam' | 'above' | 'wing' | 'below'}`;
  return partNamed<{ choices: Wings; size: SizesOf<typeof tunicSizes>; edge: Edge }, { size: never; edge: never }>({
    passages: [
      {
        measure: 'wing-base',
        through: 'wing',
        gives: ({ wingLong }, { choices }) => wingLong / wingShare(choices),
        when: isWinged,
      },
    ],
    seams: [
      ...(['seam', 'above', 'below'] as const).map((edge) => ({
        name: edge === 'seam' ? 'side' : `wing-${edge}`,
        sewn: 2 as const,
        first: [{ piece: before, edge }],
        second: [{ piece: behind, edge }],
        when: edge === 'seam' ? isPlain : isWinged,
      })),
      ...[['before', before] as const, ['behind', behind] as const].map(([side, piece]) => ({
        name: `wing-${side}`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece, edge: 'wing' }],
        second: [],
        when: isWinged,
      })),
    ],
    notes: [
      {
        code: 'wing-slit-short',
        measures: ['wing-base', 'hem-girth'],
        told: ({ sizes: { wingMissing, wingLong } }) =>
          wingMissing > MISSING_MM ? { by: wingMissing, slit: wingLong } : null,
        when: isWinged,
      },
      {
        code: 'wing-slit-moved',
        measures: ['wing-height', 'height'],
        told: ({ sizes: { wingMoved } }) => (Math.abs(wingMoved) > UNSAID_MM ? { by: Math.abs(wingMoved) } : null),
        when: isWinged,
      },
    ],
  });
}
