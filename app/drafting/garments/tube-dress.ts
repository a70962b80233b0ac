import { tubeDress as tubeDressBlock } from '../blocks/tube-dress';
import type { Hems } from '../heads/choices';
import { tubeDressHead } from '../heads/tube-dress';
import { assemble } from '../rows/garment';
import type { Both, RefTo } from '../rows/names';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { LEAST_EASE_MM, SOFT_PASS } from '../sizes/ease';
import { elasticFor } from '../sizes/fastening';
import { maker, type SizesOf } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';
import { bindingPart } from './parts/binding';
import { hemRole } from './parts/hem';

const TWO_SEAMS = 2;
/** So much wider than the chest, and the hem than all it hangs over (common practice, no source). */
const FULL = 1.2;
const SWING = 1.25;
/** Half the top is gathered on to a quarter of the neck by so much, and leaves this much of the width to the armhole. */
const GATHERED = 1.5;
const MOST_TOP = 0.82;
/** Over each shoulder so much of the neck's elastic lies bare, of the neck; and the armhole is at least so deep, mm, and for what it cuts in. */
const BARE = 0.2;
/** An elastic gives twice its length (common practice, no source). */
const STRETCHED = 2;
const HEAD_ROOM_MM = 6;
const LEAST_ARM_MM = 15;
const FLATTEST_ARM = 0.7;
/** A side never leans more than this for each mm of its length; below the underarm at least so much is left, mm. */
const STEEPEST = 0.4;
const LEAST_SIDE_MM = 12;

/** By quarters: the top, the width below the arms, the hem. */
const dressSizes = maker(
  [],
  ['chest', 'neckOpen', 'dressTop', 'dressHalf', 'dressArm', 'dressHem', 'dressSide'],
  (wearer: Wearer<Hems>) => {
    const chest = Math.max(wearer.girth('chest-girth', TWO_SEAMS) * FULL, wearer.of('neck-girth'));
    // Gathered on to the neck, and never so little that the head would not pass.
    const bare = 2 * BARE * STRETCHED * wearer.of('neck-girth');
    const firm = wearer.traits.stuffing === 'firm' || wearer.traits.head === 'firm';
    const head = wearer.of('head-girth') * (firm ? 1 : SOFT_PASS) + HEAD_ROOM_MM;
    const top = Math.max(wearer.of('neck-girth') * GATHERED, head - bare) / 4;
    const half = Math.max(chest / 4, top / MOST_TOP);
    const side = Math.max(wearer.of('underarm-to-waist') + wearer.of('waist-to-hem'), wearer.hem + LEAST_SIDE_MM);
    const hem = Math.max(half, (wearer.girth('hip-girth', TWO_SEAMS) * SWING) / 4);
    const arm = Math.max(wearer.of('armhole-depth'), LEAST_ARM_MM, FLATTEST_ARM * (half - top));
    return {
      sizes: {
        chest: 4 * half,
        neckOpen: 4 * top + bare,
        dressTop: top,
        dressHalf: half,
        dressArm: arm,
        dressHem: Math.min(hem, half + STEEPEST * side),
        dressSide: side,
      },
    };
  },
);

type Side = 'front' | 'back';
type Gives = {
  readonly size: SizesOf<typeof dressSizes>;
  readonly edge: EdgesOf<`dress-${Side}`, typeof tubeDressBlock>;
};
type Takes = { readonly choices: Hems; readonly size: never; readonly edge: 'armhole-binding.side' };
type Names = Both<Takes, Gives>;

const sides = ['front', 'back'] as const;

/** From the front's casing under the arm to the back's. */
const armhole = (): RefTo<`dress-${Side}.armhole`>[] => [
  { piece: 'dress-front', edge: 'armhole' },
  { piece: 'dress-back', edge: 'armhole', back: true },
];
export const tubeDress = assemble(tubeDressHead, [
  part<Takes, Gives>({
    sizes: [dressSizes],
    passages: [{ measure: 'head-girth', through: 'neck', gives: ({ neckOpen }) => neckOpen }],
    pieces: sides.map((side) =>
      piece<Names>()(`dress-${side}`, tubeDressBlock, {
        copies: 1,
        mirrored: false,
        onFold: true,
        roles: (choices) => ({ top: 'casing', armhole: 'seam', side: 'seam', hem: hemRole(choices), centre: 'fold' }),
        ...(side === 'back' ? { back: true as const } : {}),
      }),
    ),
    seams: [
      {
        name: 'dress-side',
        sewn: 2,
        first: [{ piece: 'dress-back', edge: 'side' }],
        second: [{ piece: 'dress-front', edge: 'side' }],
      },
      ...sides.map((side) => ({
        name: `dress-${side}-casing`,
        sewn: 2 as const,
        kind: 'folded' as const,
        // The armholes are bound first, up to the cut edge: what is turned down has no raw end then.
        after: () => ['armhole-binding-edge', 'armhole-binding-inside'],
        first: [
          { piece: `dress-${side}` as const, edge: 'top' as const },
          { piece: 'armhole-binding' as const, edge: 'side' as const },
        ],
        second: [],
      })),
      {
        name: 'dress-hem',
        sewn: 2,
        kind: 'folded',
        // Once it hangs as it is worn.
        after: () => sides.map((side) => `dress-${side}-casing`),
        first: [
          { piece: 'dress-front', edge: 'hem', back: true },
          { piece: 'dress-back', edge: 'hem' },
        ],
        second: [],
      },
    ],
    fit: [
      { place: 'chest', measure: 'chest-girth', garment: ({ sizes }) => sizes.chest },
      {
        place: 'hem',
        measure: 'hip-girth',
        garment: ({ sizes }) => 4 * sizes.dressHem,
        why: ({ sizes, wearer }) =>
          4 * sizes.dressHem < wearer.of('hip-girth') + LEAST_EASE_MM ? 'above-the-hip' : null,
      },
    ],
    notions: [{ kind: 'elastic', place: 'dress-neck', length: ({ wearer }) => elasticFor(wearer.of('neck-girth')) }],
  }),
  // Too hollow to turn.
  bindingPart('armhole-binding', {
    edge: armhole,
    closed: () => false,
    ends: () => 'front',
    rings: 2,
    intoCasing: true,
    hollow: () => true,
  }),
]);
