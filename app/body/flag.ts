import type { MeasureId } from './measures';

/** `impossible` stops what depends on it, `unlikely` asks "measure again, or keep it?", `note` only tells. */
export type Severity = 'impossible' | 'unlikely' | 'note';

/**
 * Something worth saying about numbers: the measures worth taking again, likeliest first, and the numbers that explain it.
 * `about`: the measures in the order its sentence speaks of them, where suspicion has them in another.
 */
export type Flag = {
  readonly code: string;
  readonly severity: Severity;
  readonly measures: readonly MeasureId[];
  readonly about?: readonly MeasureId[];
  readonly values: Readonly<Record<string, number>>;
};
