import type { Body, Known } from './body';
import type { Flag } from './flag';
import type { MeasureId } from './measures';
import type { Breach, Judged, Rule, RuleContext } from './rule';
import { rules } from './rules';
import { type Suspicion, suspect } from './suspicion';

const rank = { impossible: 0, unlikely: 1, note: 2 } as const;

/**
 * Everything about a body's numbers worth saying, worked out anew each time: impossible first, then by how much the
 * other readings speak against the measure named first. One slip raises one doubt: what names a measure already doubted is
 * that fault again. `context` is what the order says of hems; `context.measures` limits the judgement to what a garment
 * uses. Where it is all but sure what was meant, `values.offer` is the length for the first measure, `values.otherOffer`
 * that for the second (two that were swapped).
 */
export function flagsOf(body: Body, context: RuleContext): readonly Flag[] {
  const first = suspect(body);
  const against = (id: MeasureId | undefined) => (id && (first.blame.get(id) ?? unjudged(body, id))) ?? -CERTAIN;
  const byBlame = (a: MeasureId, b: MeasureId) => against(b) - against(a);
  const told = (suspicions: readonly Suspicion[], about: readonly Rule[]) => {
    const cleared = without(body, new Set(suspicions.flatMap(({ measures }) => measures)));
    const judged: Judged = { ...context, suspicions };
    return about.flatMap((rule) =>
      breachesOf(rule, { body, cleared }, judged).map((breach) => flagOf(rule, breach, byBlame, first.suspicions)),
    );
  };
  const impossible = told(first.suspicions, cannotBe);
  // What cannot be says nothing of what the others should be.
  const accused = new Set(impossible.flatMap(({ measures }) => measures.slice(0, 1)));
  const { suspicions } = accused.size === 0 ? first : suspect(without(body, accused));
  const flags = [...impossible, ...told(suspicions, others)].sort(
    (a, b) => rank[a.severity] - rank[b.severity] || against(b.measures[0]) - against(a.measures[0]),
  );
  return onceEach(flags);
}

const cannotBe = rules.filter(({ severity }) => severity === 'impossible');
const others = rules.filter(({ severity }) => severity !== 'impossible');

/** Stands for an evidence no other can outweigh. */
const CERTAIN = 1e9;

/** A reading the model cannot use is no length at all; what was not read is not to blame. */
const unjudged = ({ sizes }: Body, id: MeasureId) => (sizes[id]?.from === 'tape' ? CERTAIN : -CERTAIN);

/** The body as far as nothing is doubted in it. */
function without(body: Body, doubted: ReadonlySet<string>): Body {
  if (doubted.size === 0) return body;
  const sizes = Object.fromEntries(Object.entries(body.sizes).filter(([id]) => !doubted.has(id)));
  return { ...body, sizes };
}

/** What of a rule is broken and heard: what is merely unlikely must hold against what nothing else speaks against. */
function breachesOf(
  rule: Rule,
  { body, cleared }: { readonly body: Body; readonly cleared: Body },
  context: Judged,
): readonly Breach[] {
  const judged = rule.severity === 'impossible' || rule.suspects ? body : cleared;
  const heard = rule.severity === 'impossible' ? isFirm : isTaken;
  return rule.broken(judged, context).filter(({ measures = rule.measures }) => {
    const known = measures.flatMap((id) => body.sizes[id] ?? []);
    if (known.length < measures.length || !measures.every((id) => context.measures?.has(id) ?? true)) return false;
    return known.every(heard);
  });
}

/** Only firm numbers accuse: an estimate is no evidence against anything, and what follows is nobody's reading. */
const isFirm = (known: Known) => known.from !== 'estimate';
const isTaken = (known: Known) => known.from === 'tape' || known.from === 'photo';

function flagOf(
  { code, severity, measures: usual }: Rule,
  { measures: ids = usual, values }: Breach,
  byBlame: (a: MeasureId, b: MeasureId) => number,
  suspicions: readonly Suspicion[],
): Flag {
  const measures = 'otherOffer' in values ? ids : [...ids].sort(byBlame);
  const offer = 'offer' in values ? undefined : offerFor(suspicions, measures[0]);
  const about = ids.some((id, at) => id !== measures[at]) && { about: ids };
  return { code, severity, measures, ...about, values: offer === undefined ? values : { ...values, offer } };
}

function offerFor(suspicions: readonly Suspicion[], id: MeasureId | undefined) {
  const known = suspicions.find(({ measures, offers }) => measures[0] === id && offers.length === 1);
  return known?.offers[0];
}

/** Of flags that name a measure some earlier one puts the blame on, only the earlier; notes ask for nothing and all stay. */
function onceEach(flags: readonly Flag[]): readonly Flag[] {
  const blamed = new Set<MeasureId>();
  return flags.filter(({ severity, measures, values }) => {
    if (severity === 'note') return true;
    if (measures.some((id) => blamed.has(id))) return false;
    for (const id of 'otherOffer' in values ? measures : measures.slice(0, 1)) blamed.add(id);
    return true;
  });
}
