import type { Body } from './body';
import type { Flag, Severity } from './flag';
import type { MeasureId } from './measures';
import type { Suspicion } from './suspicion';
import type { Mm } from './units';

/** What rules measure against beside the body itself. */
export type RuleContext = {
  /** Turned up at a hem, be it of a body, a sleeve or a leg, mm. */
  readonly hemAllowance: Mm;
  /** Judge only these measures (what a garment uses); all where left out. */
  readonly measures?: ReadonlySet<MeasureId>;
  /** Readings as taken, where the judge has them: repeated ones are compared. */
  readonly readings?: { readonly [M in MeasureId]?: readonly Mm[] };
};

/** What the proportions of the other readings speak against; worked out once for all rules. */
export type Judged = RuleContext & { readonly suspicions: readonly Suspicion[] };

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
  /** Speaks of what the other readings say of one, so that it must see the doubted number. */
  readonly suspects?: true;
  readonly broken: (body: Body, context: Judged) => readonly Breach[];
};

/** What a rule says of the values of its measures (mm): the numbers of a breach, or false. */
type Check = (values: readonly [Mm, Mm, Mm], context: Judged, body: Body) => Flag['values'] | false;

export const GEOMETRY = 'geometry';
export const PRACTICE = 'common practice, no source';

/** A row about one to three measures, heard where the body knows them all. */
export function row(
  code: string,
  severity: Severity,
  measures: readonly MeasureId[],
  why: string,
  source: string,
  check: Check,
): Rule {
  const broken = (body: Body, context: Judged): readonly Breach[] => {
    const known = measures.flatMap((id) => body.sizes[id]?.value ?? []);
    if (known.length < measures.length) return [];
    const [first = 0, second = 0, third = 0] = known;
    const values = check([first, second, third], context, body);
    return values ? [{ values }] : [];
  };
  return { code, severity, measures, why, source, broken };
}
