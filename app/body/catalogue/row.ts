import type { Group, Measure, Nature, Region, View } from '../measure';
import type { SizeId } from '../sizes';
import type { Mm } from '../units';

/** Typical values for upright, four-legged and round toys; 0 where the kind has no such measure. */
type Typical = readonly [upright: Mm, fourLegged: Mm, round: Mm];

type More = Partial<Pick<Measure, 'leans' | 'after' | 'optional'>> & { readonly governs?: readonly SizeId[] };

/**
 * How far toys of one size differ in each group (log scale, one standard deviation): from memory and from toys imagined
 * as solids, no source. Heads vary more than trunks; tails, ears and sleeves as the maker of the toy, or of the
 * clothes, pleases.
 */
const groupSpread: { readonly [G in Group]: number } = {
  head: 0.2,
  ear: 0.25,
  trunk: 0.2,
  length: 0.14,
  shoulder: 0.2,
  limb: 0.18,
  arm: 0.25,
  leg: 0.18,
  stride: 0.23,
  tail: 0.35,
  wish: 0.12,
};

/** A row of the catalogue; see `Measure`. A group's own sway is filled in unless `leans` states another. */
export function row<Id extends string>(
  id: Id,
  nature: Nature,
  [region, view]: readonly [Region, View],
  group: Group,
  [upright, fourLegged, round]: Typical,
  spread: number,
  { leans, governs = [], ...more }: More = {},
): Measure<Id> {
  return {
    id,
    nature,
    region,
    group,
    view,
    typical: {
      ...(upright && { upright }),
      ...(fourLegged && { 'four-legged': fourLegged }),
      ...(round && { round }),
    },
    leans: { [group]: groupSpread[group], ...leans },
    spread,
    governs,
    after: [],
    ...more,
  };
}
