import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Hems, Skirts } from '../../heads/choices';
import type { Look, RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import type { SeamRow } from '../../rows/rows';
import { panelsIn } from '../../sizes/fullness';
import type { Sizes } from '../../sizes/maker';
import { TIER_GATHERS } from '../../sizes/skirt';
import { hemRole } from './hem';

export const isTiered = ({ skirt }: Skirts) => skirt === 'tiers';

type Own = EdgesOf<`tier-${Tier}`, typeof flare>;
type TierSize = `tier${Tier}` | `tier${Tier}Panels`;
type Above = 'skirt-front.bottom' | 'skirt-back.bottom';
type Takes = { readonly choices: Skirts & Hems; readonly size: 'skirtLength'; readonly edge: Above };
type Names = {
  readonly choices: Takes['choices'];
  readonly size: TierSize | 'skirtLength';
  readonly edge: Own | Above;
};
type Counted = Sizes<`tier${Tier}Panels`>;

/** Tiers less deep than this are all seam (common practice, no source). */
const NARROWEST_TIER_MM = 18;

type Tier = 2 | 3;
const last: Tier = 3;
const above = (tier: Tier, { length, sizes }: Look<Names>): Mm =>
  tier === 2
    ? 2 * (length('skirt-front.bottom') + length('skirt-back.bottom'))
    : 2 * panels(2, sizes) * length('tier-2.bottom');

const panels = (tier: Tier, sizes: Counted): number => sizes[`tier${tier}Panels`];

/** A tier goes round in equal panels, none wider than cloth, each on the fold. */
function row(tier: Tier) {
  return piece<Names>()(`tier-${tier}`, flare, {
    copies: (sizes) => panels(tier, sizes),
    mirrored: false,
    onFold: true,
    sizes: { flareTop: `tier${tier}` as const, flareBottom: `tier${tier}` as const, flareHeight: 'skirtLength' },
    takes: (look) => {
      const round = above(tier, look) * TIER_GATHERS;
      const count = panelsIn(round);
      return { [`tier${tier}`]: round / count / 2, [`tier${tier}Panels`]: count };
    },
    roles: (choices) => ({
      top: 'seam',
      side: 'seam',
      bottom: tier === last ? hemRole(choices) : 'seam',
      centre: 'fold',
    }),
  });
}

/** An edge of every panel of a tier, all the way round. */
const round =
  (tier: Tier, edge: 'top' | 'bottom') =>
  (_: object, sizes: Counted): RefTo<Own>[] => [{ piece: `tier-${tier}`, edge, times: 2 * panels(tier, sizes) }];

const ends = (tier: Tier): SeamRow<Names> => {
  const side = (_: object, sizes: Counted): RefTo<Own>[] => [
    { piece: `tier-${tier}`, edge: 'side', times: panels(tier, sizes) },
  ];
  return { name: `tier-${tier}-side`, sewn: 1, first: side, second: side };
};

/** Each tier is gathered on to the one above. */
export const tiersPart = only(
  isTiered,
  part<Takes, { size: TierSize; edge: Own }>({
    pieces: [row(2), row(3)],
    seams: [
      ends(2),
      ends(3),
      {
        name: 'tier-2',
        sewn: 1,
        first: [
          { piece: 'skirt-front', edge: 'bottom', times: 2 },
          { piece: 'skirt-back', edge: 'bottom', times: 2 },
        ],
        second: round(2, 'top'),
        longer: 'gathered',
      },
      { name: 'tier-3', sewn: 1, first: round(2, 'bottom'), second: round(3, 'top'), longer: 'gathered' },
      { name: 'tier-hem', sewn: 1, kind: 'folded', first: round(last, 'bottom'), second: [] },
    ],
    notes: [
      {
        code: 'tiers-narrow',
        measures: ['waist-to-hem'],
        told: ({ sizes: { skirtLength } }) => (skirtLength < NARROWEST_TIER_MM ? { deep: skirtLength } : null),
      },
    ],
  }),
);
