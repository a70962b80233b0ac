import type { Body, Flag, Mm, SizeId } from '../../body';
import type { Adjustment } from '../draft-types';
import { known, type Made, type SizeMaker } from './maker';
import type { Wearer } from './wearer';

/**
 * Makes all sizes in turn, with the corrections learnt from trying on laid over them: once, where a size is made from the body
 * and not from one that is corrected already. Throws a RangeError where a maker takes a size that none gave, or does not give
 * what it says.
 */
export function finishedSizes<C extends object>(
  wearer: Wearer<C>,
  makers: readonly SizeMaker<C>[],
  corrections: Body['corrections'],
): Required<Made> {
  const sizes: Record<string, Mm> = {};
  const adjustments: Adjustment[] = [];
  const stops: Flag[] = [];
  for (const { takes, gives, make } of makers) {
    const made = make(wearer, known(sizes));
    for (const name of gives) {
      const size = made.sizes[name];
      if (size === undefined || !Number.isFinite(size)) throw new RangeError(`size not made: ${name}`);
      sizes[name] = size + (takes.includes(name) ? 0 : (corrections[name as SizeId] ?? 0));
    }
    adjustments.push(...(made.adjustments ?? []));
    stops.push(...(made.stops ?? []));
  }
  return { sizes, adjustments, stops };
}
