import type { Look, RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { bareSizes, leastBareShoulder } from '../../sizes/bare';
import type { SizesOf } from '../../sizes/maker';
import { bindingPart } from './binding';
import type { BodiceGives } from './bodice';
import { type Armholes, armhole, deepened, LEAST_SIDE_SHARE } from './sleeve-match';
import type { Top } from './top';

type Takes = { readonly choices: object; readonly size: BodiceGives['size']; readonly edge: Armholes };
type Gives = { readonly size: SizesOf<typeof bareSizes>; readonly edge: never };
type Seen = Look<{ choices: object; size: BodiceGives['size'] | Gives['size']; edge: Armholes }>;

/** An armhole that nothing is set into is deepened up to this share to go round the arm (common practice, no source). */
const DEEPEST = 1.5;
/** What a solver leaves open, mm. */
const ROUNDED_MM = 0.01;

const edges = (): RefTo<Armholes>[] => [
  { piece: 'front', edge: 'armhole', back: true },
  { piece: 'back', edge: 'armhole' },
];

/** Round the arm, as far as anybody measured it. */
const needed = (look: Seen) => (look.wearer.taken('arm-root-girth') ? look.sizes.armRoot : armhole(look));

/** Armholes without a sleeve: openings that an arm goes through and stays in. */
const bare = part<Takes, Gives>({
  sizes: [bareSizes],
  passages: (['paw-girth', 'arm-root-girth'] as const).map((measure) => ({
    measure,
    through: 'armhole',
    drawn: armhole,
  })),
  match: [
    {
      what: 'armhole-round',
      ratio: (look) => armhole(look) / needed(look),
      aim: () => [1, Number.POSITIVE_INFINITY],
      turn: [
        {
          size: 'armholeDepth',
          limit: (look, start) => deepened(look, start, DEEPEST, LEAST_SIDE_SHARE),
          code: 'armhole-deepened',
          check: ['armhole-depth', 'arm-root-girth'],
        },
      ],
      rest: 'accept',
      check: ['arm-root-girth', 'armhole-depth'],
    },
  ],
  fit: [
    {
      place: 'armhole',
      measure: 'arm-root-girth',
      garment: armhole,
      why: (look) => (armhole(look) < needed(look) - ROUNDED_MM ? 'armhole-round-differs' : null),
    },
  ],
});

/** Said of a shoulder that is finished on both sides and hardly wide enough. */
const narrow = part<{ choices: object; size: 'shoulder'; edge: never }>({
  notes: [
    {
      code: 'shoulder-narrow',
      measures: ['shoulder-length', 'neck-girth'],
      told: ({ sizes: { shoulder }, wearer }) => (shoulder < leastBareShoulder(wearer) - 0.5 ? { shoulder } : null),
    },
  ],
});

/** Without a sleeve an armhole is bound, too hollow to turn; or lined. */
export const armholeParts = <C extends object>({ arm, lined, facedInOne }: Top<C>) =>
  [
    only((choices: C) => arm(choices) === 'bare', bare),
    only((choices: C) => arm(choices) === 'bare' && !facedInOne?.(choices), narrow),
    only(
      (choices: C) => arm(choices) === 'bare' && !lined(choices) && !facedInOne?.(choices),
      bindingPart('armhole-binding', {
        edge: edges,
        closed: () => true,
        ends: () => 'front',
        rings: 2,
        hollow: () => true,
      }),
    ),
  ] as const;
