import type { Body, Known } from './body';
import type { Flag } from './flag';
import type { MeasureId } from './measures';
import type { Breach, Judged, Rule, RuleContext } from './rule';
import { rules } from './rules';
import { judge, type Suspicion } from './suspicion';
import type { Mm } from './units';

/** Usual turn-ups where the order says nothing, mm. */
const usualContext: RuleContext = { hemAllowance: 12, cuffAllowance: 12 };

const rank = { impossible: 0, unlikely: 1, note: 2 } as const;

/**
 * Everything about a body's numbers worth saying, worked out anew each time: impossible first, then by how much the
 * other readings speak against the measure named first. `context` is what the order says of hems;
 * `context.measures` limits the judgement to what a garment uses. Where it is clear what was meant, `values.offer` is
 * the length for the first measure, `values.otherOffer` that for the second (two that were swapped).
 */
export function flagsOf(body: Body, context: Partial<RuleContext> = {}): readonly Flag[] {
  const { suspicions, blame } = judge(body);
  const judged: Judged = { ...usualContext, ...context, suspicions };
  const against = (id: MeasureId | undefined) => (id && (blame.get(id) ?? unjudged(body, id))) ?? -CERTAIN;
  const byBlame = (a: MeasureId, b: MeasureId) => against(b) - against(a);
  const mended = mend(body, suspicions);
  return rules
    .flatMap((rule) =>
      breachesOf(rule, body, mended, judged).map((breach) => flagOf(rule, breach, byBlame, suspicions)),
    )
    .sort((a, b) => rank[a.severity] - rank[b.severity] || against(b.measures[0]) - against(a.measures[0]));
}

/** Stands for an evidence no other can outweigh. */
const CERTAIN = 1e9;

/** A reading the model cannot use is no length at all; what was not read is not to blame. */
const unjudged = ({ sizes }: Body, id: MeasureId) => (sizes[id]?.from === 'tape' ? CERTAIN : -CERTAIN);

/**
 * What of a rule is broken and heard. What is merely unlikely, and would not be so without a fault already found, is
 * that fault again: not said twice.
 */
function breachesOf(rule: Rule, body: Body, mended: Body, context: Judged): readonly Breach[] {
  const judged = rule.severity === 'unlikely' ? mended : body;
  return rule.broken(judged, context).filter(({ measures = rule.measures }) => {
    const known = measures.flatMap((id) => body.sizes[id] ?? []);
    if (known.length < measures.length || !measures.every((id) => context.measures?.has(id) ?? true)) return false;
    return rule.severity === 'impossible' ? known.every(isFirm) : known.some(isFirm);
  });
}

/** An estimate is no evidence against anything. */
const isFirm = (known: Known) => known.from !== 'estimate';

function flagOf(
  { code, severity, measures: usual }: Rule,
  { measures: ids = usual, values }: Breach,
  byBlame: (a: MeasureId, b: MeasureId) => number,
  suspicions: readonly Suspicion[],
): Flag {
  const measures = 'otherOffer' in values ? ids : [...ids].sort(byBlame);
  const offer = 'offer' in values ? undefined : offersOf(suspicions).get(measures[0] ?? '');
  return { code, severity, measures, values: offer === undefined ? values : { ...values, offer } };
}

/** The body as it would be without the faults found: what was meant in place of what was read. */
function mend(body: Body, suspicions: readonly Suspicion[]): Body {
  if (suspicions.length === 0) return body;
  const expected = suspicions.flatMap(({ measures, expected: value }) => measures.map((id) => [id, value] as const));
  const sizes = { ...body.sizes };
  for (const [id, value] of [...expected, ...offersOf(suspicions)]) {
    const known = findKnown(sizes, id);
    if (known) Object.assign(sizes, { [id]: { ...known, value } });
  }
  return { ...body, sizes };
}

const findKnown = (sizes: Readonly<Record<string, Known>>, id: string) => sizes[id];

function offersOf(suspicions: readonly Suspicion[]): ReadonlyMap<string, Mm> {
  return new Map(
    suspicions.flatMap(({ measures, offers }) =>
      offers.flatMap((offer, at) => (measures[at] ? [[measures[at], offer] as const] : [])),
    ),
  );
}
