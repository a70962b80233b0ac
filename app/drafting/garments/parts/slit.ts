import { neckSlitFacing } from '../../blocks/slit-facing';
import type { Dressed, Opens } from '../../heads/choices';
import { type RefTo, sumOf } from '../../rows/names';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { drawnTrunk } from '../../sizes/trunk';
import type { BodiceGives } from './bodice';
import type { Side, Sides } from './top';

type Gives = { readonly size: never; readonly edge: EdgesOf<'slit-facing', typeof neckSlitFacing> };
type Takes<C extends object> = {
  readonly choices: C & Opens;
  readonly size: BodiceGives['size'];
  readonly edge: Sides;
};

/**
 * A slit down the centre of one side, faced: for a head that does not pass the neckline. `faced`: something else faces it;
 * `chin`: whether a hood leaves the middle of the neckline free.
 */
export function slitPart<C extends object>(
  side: Side,
  faced: (choices: C) => boolean,
  chin: (choices: C) => boolean = () => false,
) {
  const isFaced = (choices: C & Opens) => choices.opening === 'slit' && !faced(choices);
  /** What the side has of the neckline, from the centre on. */
  const along = (choices: C): readonly RefTo<'front.chin' | `${Side}.neckline`>[] => [
    ...(chin(choices) ? [{ piece: 'front', edge: 'chin' } as const] : []),
    { piece: side, edge: 'neckline' },
  ];
  return part<Takes<C>, Gives>({
    pieces: [
      piece<Takes<C>>()('slit-facing', neckSlitFacing, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          neckDrop: `${side}NeckDrop` as const,
          neckLong: (look) => sumOf(along(look.choices), look),
          chestHalf: ({ sizes }) => drawnTrunk(sizes)[side].chest,
          // Drawn without a slit it would be our own fault: not fed, it throws.
          slitLength: ({ slit }) => slit ?? Number.NaN,
        },
        roles: () => ({ top: 'neckline', side: 'edge', bottom: 'edge', centre: 'fold' }),
        cuts: ['slit'],
        when: isFaced,
      }),
    ],
    seams: [
      {
        name: 'slit',
        sewn: 1,
        kind: 'laid',
        first: [{ piece: side, edge: 'slit', times: 2 }],
        second: [{ piece: 'slit-facing', edge: 'slit', times: 2 }],
        when: isFaced,
      },
      {
        name: 'slit-top',
        sewn: 2,
        kind: 'laid',
        first: along,
        second: [{ piece: 'slit-facing', edge: 'top' }],
        when: isFaced,
      },
    ],
  });
}

/**
 * The edges of a slit meet and do not lap, so neither hook and loop nor snaps close it: a loop and a button at its top do, or it
 * gapes (common practice, no source). A small child's hands find no button; under a hood the chin is free anyhow.
 */
export const slitLoopPart = part<{ choices: Opens & Dressed; size: never; edge: never }>({
  notions: [{ kind: 'loop', place: 'slit', length: () => 0, when: isLooped }],
  notes: [{ code: 'slit-looped', measures: [], told: () => ({}), when: isLooped }],
});

function isLooped({ opening, dresser }: Opens & Dressed): boolean {
  return opening === 'slit' && dresser !== 'small-child';
}
