import { bag } from '../blocks/bag';
import { pillow } from '../blocks/pillow';
import type { Hems } from '../heads/choices';
import { sleepingBagHead } from '../heads/sleeping-bag';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { easedGirth } from '../sizes/ease';
import { maker, type SizesOf } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';
import { hemRole } from './parts/hem';

/** A bag is roomy, for arms lie in it too: so much over the body, at least, and so much of its height (common practice, no source). */
const ROOM = 0.3;
const LEAST_ROOM_MM = 30;
const TWO_SEAMS = 2;
/** The front ends under the chin; the back lies under the head as well. Below the feet goes a quarter of the girth's half. */
const FRONT_SHARE = 0.62;
const BEHIND_HEAD = 1.04;
const BELOW_FEET = 0.125;
/** The pillow is as wide as the bag but for a margin, and so deep for its width; never smaller than can be turned. */
const PILLOW = { wide: 0.8, deep: 0.6, least: 35 } as const;

/** Width and lengths of the two layers, and of the pillow. */
const bagSizes = maker(
  [],
  ['bag', 'bagHalf', 'bagFront', 'bagBack', 'bagAbove', 'pillowHalf', 'pillowDeep'],
  (wearer: Wearer<Hems>) => {
    const girth = easedGirth(
      wearer.of('body-girth'),
      Math.max(wearer.share, ROOM),
      wearer.cloth,
      LEAST_ROOM_MM,
      TWO_SEAMS,
    );
    const feet = BELOW_FEET * girth;
    const high = wearer.of('height');
    const half = girth / 4;
    const front = Math.max(high * FRONT_SHARE, half) + feet;
    const back = Math.max(high * BEHIND_HEAD + feet, front + wearer.hem + half);
    const pillowHalf = Math.max(half * PILLOW.wide, PILLOW.least);
    return {
      sizes: {
        bag: girth,
        bagHalf: half,
        bagFront: front,
        bagBack: back,
        bagAbove: back - front,
        pillowHalf,
        pillowDeep: 2 * pillowHalf * PILLOW.deep,
      },
    };
  },
);

type Gives = {
  readonly size: SizesOf<typeof bagSizes>;
  readonly edge: EdgesOf<'bag-back' | 'bag-front', typeof bag> | EdgesOf<'pillow', typeof pillow>;
};
type Names = Gives & { readonly choices: Hems };

const layer = { copies: 1, mirrored: false, onFold: true } as const;
const self = <E extends 'top' | 'side' | 'bottom' | 'gap'>(edge: E) =>
  ({ first: [{ piece: 'pillow', edge }], second: [{ piece: 'pillow', edge }] }) as const;

export const sleepingBag = assemble(sleepingBagHead, [
  part<{ choices: Hems; size: never; edge: never }, Gives>({
    sizes: [bagSizes],
    passages: [{ measure: 'body-girth', through: 'bag', gives: ({ bag: girth }) => girth }],
    pieces: [
      piece<Names>()('bag-back', bag, {
        ...layer,
        sizes: { bagLong: 'bagBack', bagAbove: 'bagAbove' },
        roles: (choices) => ({ top: hemRole(choices), above: hemRole(choices), round: 'seam', centre: 'fold' }),
        back: true,
      }),
      piece<Names>()('bag-front', bag, {
        ...layer,
        sizes: { bagLong: 'bagFront' },
        roles: (choices) => ({ top: hemRole(choices), round: 'seam', centre: 'fold' }),
      }),
      piece<Names>()('pillow', pillow, {
        ...layer,
        copies: 2,
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', gap: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      { name: 'bag-front-hem', sewn: 2, kind: 'folded', first: [{ piece: 'bag-front', edge: 'top' }], second: [] },
      { name: 'bag-sides', sewn: 2, kind: 'folded', first: [{ piece: 'bag-back', edge: 'above' }], second: [] },
      { name: 'bag-back-hem', sewn: 2, kind: 'folded', first: [{ piece: 'bag-back', edge: 'top' }], second: [] },
      {
        name: 'bag-round',
        sewn: 2,
        after: () => ['bag-front-hem', 'bag-sides', 'bag-back-hem'],
        first: [{ piece: 'bag-back', edge: 'round' }],
        second: [{ piece: 'bag-front', edge: 'round' }],
        cornered: true,
      },
      // One thing after the other: the pillow is begun when the bag is done.
      ...(['top', 'side', 'bottom'] as const).map((edge) => ({
        name: `pillow-${edge}`,
        sewn: 2 as const,
        after: () => ['bag-round'],
        ...self(edge),
      })),
      { name: 'pillow-gap', sewn: 2, kind: 'laid', ...self('gap') },
    ],
    notions: [{ kind: 'filling', place: 'pillow', length: ({ sizes }) => 2 * sizes.pillowHalf }],
    fit: [{ place: 'bag', measure: 'body-girth', garment: ({ sizes }) => sizes.bag }],
  }),
]);
