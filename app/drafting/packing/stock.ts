import { QUARTERS, relationsOf } from './alike';
import { type Charts, chartsOf } from './chart';
import { type Lists, listsOf } from './near';
import type { Shape } from './shape';
import { type Sums, sumsOf, turnedSums } from './sums';

/** Shapes, the sums of every two of them, the resting one first, worked out when first asked for; and all their charts. */
export type Stock = {
  readonly shapes: readonly Shape[];
  readonly apart: number;
  readonly sums: (resting: number, moving: number) => Sums;
  readonly charts: () => Charts;
  readonly lists: () => Lists;
};

/** `apart`: what any two shapes keep between them; with 0 they may overlap by what rounding costs. */
export function stockOf(shapes: readonly Shape[], apart: number): Stock {
  const relations = relationsOf(shapes);
  const known: (Sums | undefined)[] = Array.from({ length: shapes.length ** 2 }, () => undefined);
  /** Of each relation, in each turn. */
  const made: (Sums | undefined)[] = Array.from({ length: relations.count * QUARTERS }, () => undefined);
  let charts: Charts | undefined;
  const make = (resting: number, moving: number, at: number): Sums => {
    const first = (relations.of[at] as number) * QUARTERS;
    const quarters = relations.quarters[at] as number;
    for (let back = 1; back < QUARTERS; back += 1) {
      const other = made[first + ((quarters + back) % QUARTERS)];
      if (other) return turnedSums(other, QUARTERS - back);
    }
    return sumsOf(shapes[resting] as Shape, shapes[moving] as Shape, apart);
  };
  const sums = (resting: number, moving: number): Sums => {
    const at = resting * shapes.length + moving;
    const found = known[at];
    if (found) return found;
    const slot = (relations.of[at] as number) * QUARTERS + (relations.quarters[at] as number);
    const now = made[slot] ?? make(resting, moving, at);
    made[slot] = now;
    known[at] = now;
    return now;
  };
  let lists: Lists | undefined;
  const chartsNow = (): Charts => {
    charts ??= chartsOf(shapes, relations, apart, sums);
    return charts;
  };
  return {
    shapes,
    apart,
    sums,
    charts: chartsNow,
    lists: () => {
      lists ??= listsOf(chartsNow());
      return lists;
    },
  };
}
