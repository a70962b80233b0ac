import type { Sleeves } from '../../heads/choices';
import { part } from '../../rows/part';
import { inOneSizes } from '../../sizes/in-one';
import type { Sizes, SizesOf } from '../../sizes/maker';
import { sleeveSizes } from '../../sizes/sleeve';
import { drawnGirth, type SideSize, type TrunkSize } from '../../sizes/trunk';
import type { Wearer } from '../../sizes/wearer';
import type { BodiceGives } from './bodice';
import type { Side, Sides } from './top';

type Own = 'shoulder' | 'cuff' | 'underarm';
/** What a sleeve cut in one needs of the bodice it is cut with. */
export type InOneTakes = {
  readonly choices: Pick<Sleeves, 'sleeve'>;
  readonly size: BodiceGives['size'];
  readonly edge: Extract<Sides, `${Side}.${Own}`>;
};

/** From the neck over shoulder and arm; round the cuff; and up the underarm, on into the side. */
export const inOneSeams = [
  {
    name: 'over-arm',
    sewn: 2,
    first: [{ piece: 'back', edge: 'shoulder' }],
    second: [{ piece: 'front', edge: 'shoulder' }],
  },
  {
    name: 'underarm',
    sewn: 2,
    // So short a sleeve is hemmed while it lies flat.
    after: ({ sleeve }: Pick<Sleeves, 'sleeve'>) =>
      sleeve === 'short' ? ['cuff', 'cuff-rib-edge'] : ['cuff-rib-edge'],
    first: [{ piece: 'back', edge: 'underarm' }],
    second: [{ piece: 'front', edge: 'underarm' }],
  },
  {
    name: 'cuff',
    sewn: 2,
    kind: 'folded',
    first: [
      { piece: 'front', edge: 'cuff' },
      { piece: 'back', edge: 'cuff', back: true },
    ],
    second: [],
  },
] as const;

/** Lowered by more than this of its depth, an underarm lies far below the toy's; round a tummy, the chest is then this much over what the fit asks. */
const DEEP = 0.5;
const FULL = 1.2;

/** Sleeves of their own would fit much closer. */
function isTooFull({ sizes, wearer }: Seen): boolean {
  return (
    sizes.armLower > DEEP * sizes.armholeDepth || drawnGirth(sizes, 'chest') > FULL * wearer.girth('chest-girth', 2)
  );
}

type Gives = { readonly size: SizesOf<typeof sleeveSizes> | SizesOf<typeof inOneSizes>; readonly edge: never };
type Seen = {
  readonly sizes: Sizes<'armLower' | TrunkSize | SideSize>;
  readonly wearer: Pick<Wearer, 'girth'>;
};

/** A top whose sleeves are always cut in one with it. */
export const inOnePart = part<InOneTakes, Gives>({
  sizes: [sleeveSizes, inOneSizes],
  passages: [{ measure: 'paw-girth', through: 'cuff', gives: ({ cuff }) => cuff }],
  seams: inOneSeams,
  notes: [
    {
      code: 'arms-thick-in-one',
      measures: ['upper-arm-girth', 'body-length'],
      told: (look) => (isTooFull(look) ? { by: look.sizes.armLower } : null),
    },
  ],
  fit: [
    { place: 'bicep', measure: 'upper-arm-girth', garment: ({ sizes }) => sizes.bicep },
    {
      place: 'cuff',
      measure: 'paw-girth',
      garment: ({ sizes }) => sizes.cuff,
      when: ({ sleeve }) => sleeve === 'long',
    },
  ],
});
