import { armMeasures } from './catalogue/arm';
import { headMeasures } from './catalogue/head';
import { legMeasures } from './catalogue/leg';
import { trunkMeasures } from './catalogue/trunk';
import { wishes } from './catalogue/wishes';
import type { Measure } from './measure';

/** The catalogue: one row a measure, in the order the tape goes round the toy, wishes last. */
export const measures = [...headMeasures, ...trunkMeasures, ...armMeasures, ...legMeasures, ...wishes] as const;

export type MeasureId = (typeof measures)[number]['id'];
export const measureIds = measures.map((measure) => measure.id) as readonly MeasureId[];

const byId = new Map<string, Measure<MeasureId>>(measures.map((measure) => [measure.id, measure]));

/** The row of a measure; `undefined` for an id the catalogue does not hold. */
export function findMeasure(id: string): Measure<MeasureId> | undefined {
  return byId.get(id);
}
