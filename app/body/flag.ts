import type { MeasureId } from './measures';

/** `impossible` stops what depends on it, `unlikely` asks "measure again, or keep it?", `note` only tells. */
export type Severity = 'impossible' | 'unlikely' | 'note';

/** Something worth saying about numbers: the measures worth taking again, likeliest first, and the numbers that explain it. */
export type Flag = {
  readonly code: string;
  readonly severity: Severity;
  readonly measures: readonly MeasureId[];
  readonly values: Readonly<Record<string, number>>;
};
