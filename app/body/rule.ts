import type { Body } from './body';
import type { Flag, Severity } from './flag';
import type { MeasureId } from './measures';
import type { Mm } from './units';

/** What a maker chose that rules measure against, mm. */
export type RuleContext = {
  /** Turned up at the hem of the body, and at the cuff of a sleeve or leg. */
  readonly hemAllowance: Mm;
  readonly cuffAllowance: Mm;
  /** Judge only these measures (what a garment uses); all where left out. */
  readonly measures?: ReadonlySet<MeasureId>;
};

/** One breach of a rule: the numbers that explain it; measures where they differ from the row's own, likeliest first. */
export type Breach = { readonly measures?: readonly MeasureId[]; readonly values: Flag['values'] };

/**
 * One row of the rule table. An impossible row is heard only where all its measures come from tape or photo, or follow
 * exactly from those: an estimate is never impossible, only poor.
 */
export type Rule = {
  readonly code: string;
  readonly severity: Severity;
  /** Worth taking again, likeliest first. */
  readonly measures: readonly MeasureId[];
  readonly why: string;
  readonly source: string;
  readonly broken: (body: Body, context: RuleContext) => readonly Breach[];
};
