import type { BodyKind, Traits } from './kinds';
import type { MeasureId } from './measures';
import type { SizeId } from './sizes';
import type { Mm } from './units';

/** Where a number comes from, surest first. */
export type Origin = 'tape' | 'photo' | 'derived' | 'estimate';

/** One measure of a toy: the value, where it comes from, and how far off it may well be (± give). */
export type Known = {
  readonly value: Mm;
  readonly from: Origin;
  readonly give: Mm;
};

export type Knowns = { readonly [M in MeasureId]?: Known };

/**
 * What a maker's other toys say of the next one, by build: how common the build is among them, and how far (log scale)
 * its measures lie from what is usual.
 */
export type Taught = {
  readonly [build: string]: { readonly share: number; readonly shifts: { readonly [M in MeasureId]?: number } };
};

/** All measures of one toy, settled from its readings: what `draft` takes. Corrections are by finished size. */
export type Body = {
  readonly kind: BodyKind;
  readonly traits: Traits;
  readonly taught?: Taught;
  readonly sizes: Knowns;
  readonly corrections: { readonly [S in SizeId]?: Mm };
};
