import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import { type Look, only, type Part, type PieceRow, type SeamRow } from '../../rows/garment';
import { panelsIn } from '../../sizes/fullness';
import { TIER_GATHERS } from '../../sizes/skirt';
import type { Choices, Sizes } from '../../sizes/wearer';
import { hemRole } from './hem';

export const isTiered = (choices: Choices) => choices.skirt === 'tiers';

/** Tiers less deep than this are all seam (common practice, no source). */
const NARROWEST_TIER_MM = 18;

type Tier = 2 | 3;
const last: Tier = 3;
const above = (tier: Tier, look: Look): Mm =>
  tier === 2
    ? 2 * (look.length('skirt-front', 'bottom') + look.length('skirt-back', 'bottom'))
    : 2 * panels(2, look.sizes) * look.length('tier-2', 'bottom');

const panels = (tier: Tier, sizes: Sizes): number => sizes[`tier${tier}Panels`] ?? 2;

/** A tier goes round in equal panels, none wider than cloth, each on the fold. */
function row(tier: Tier): PieceRow {
  return {
    name: `tier-${tier}`,
    copies: (sizes) => panels(tier, sizes),
    mirrored: false,
    onFold: true,
    block: flare,
    sizes: { flareTop: `tier${tier}`, flareBottom: `tier${tier}`, flareHeight: 'skirtLength', flareOpen: 'notOpen' },
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
  };
}

/** An edge of every panel of a tier, all the way round. */
const round =
  (tier: Tier, edge: 'top' | 'bottom') =>
  (_: Choices, sizes: Sizes): Ref[] => [{ piece: `tier-${tier}`, edge, times: 2 * panels(tier, sizes) }];

const ends = (tier: Tier): SeamRow => {
  const side = (_: Choices, sizes: Sizes): Ref[] => [
    { piece: `tier-${tier}`, edge: 'side', times: panels(tier, sizes) },
  ];
  return { name: `tier-${tier}-side`, sewn: 1, first: side, second: side };
};

/** Each tier is gathered on to the one above. */
export const tiersPart: Part = only(isTiered, {
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
      told: ({ sizes: { skirtLength = 0 } }) => (skirtLength < NARROWEST_TIER_MM ? { deep: skirtLength } : null),
    },
  ],
});
