import type { Hems } from '../../heads/choices';
import { only, part } from '../../rows/part';
import { levelHemSizes } from '../../sizes/level-hem';
import type { SizesOf } from '../../sizes/maker';
import { drawnGirth } from '../../sizes/trunk';
import type { BodiceGives } from './bodice-names';
import { isReady, readyNote } from './hem';

type Size = SizesOf<typeof levelHemSizes>;

/** A straight hem is none where the chest would grow by more than this for it, or the front lose more of its length (common practice, no source). */
const WIDEST_CHEST = 1.12;
const SHORTEST_FRONT = 0.85;

/** A hem that is laid on a finished one: straight and level; turned where that would ride up over a round tummy. */
export const levelHemPart = only(
  isReady,
  part<{ choices: Hems; size: BodiceGives['size']; edge: never }, { size: Size; edge: never }>({
    sizes: [levelHemSizes],
    instead: [
      {
        choice: 'hem',
        from: 'ready',
        to: 'turned',
        code: 'hem-turned-for-tummy',
        check: ['body-girth', 'chest-girth'],
        when: ({ sizes, wearer }) =>
          drawnGirth(sizes, 'chest') > sizes.chest * WIDEST_CHEST ||
          sizes.frontLength < wearer.of('body-length') * SHORTEST_FRONT,
      },
    ],
    notes: [readyNote],
  }),
);
