import type { MeasureId } from './measures';
import { type MisreadingCode, misreadings } from './misreadings';
import { type Taken, takenOf, type Wearer } from './proportions';
import { freedomOf, gainOf, type Standing, standingOf } from './standing';
import { LONGEST_MM, type Mm, SHORTEST_MM } from './units';

/**
 * One reading, or a pair, that the others speak against. `offers` is what was most likely meant, where that is clear;
 * `expected` what the others lead one to expect; `evidence` the logarithm of how much likelier this is than that
 * nothing is wrong.
 */
export type Suspicion = {
  readonly code: MisreadingCode | 'swapped' | 'proportion';
  readonly measures: readonly MeasureId[];
  readonly offers: readonly Mm[];
  readonly expected: Mm;
  readonly evidence: number;
};

/** About one reading in a hundred is wrong, and one pair of neighbours in five hundred swapped: from memory. */
const WRONG_SHARE = 0.01;
const SWAPPED_SHARE = 0.002;
const SWAPPED_AFAR_SHARE = 0.0002;
/** Of the wrong ones, this share is wrong in a way that has no name. */
const NAMELESS_SHARE = 0.3;
/** How far a reading that is wrong in no known way may lie off (log scale): anywhere between a third and threefold, mostly. */
const NAMELESS_SPREAD = 1.2;
/** Speak up when it is this many times likelier (as a logarithm) that something is wrong. */
const ENOUGH_EVIDENCE = -1.5;
/** Fewer readings than this agree on nothing. */
const FEWEST_READINGS = 4;
/** After this many wrong readings the toy is simply unlike others. */
const MOST_SUSPICIONS = 3;

/** What the readings say of each other; `blame` is how much the rest speaks against each, for whatever reason (logarithm). */
export type Judgement = { readonly suspicions: readonly Suspicion[]; readonly blame: ReadonlyMap<MeasureId, number> };

/**
 * Finds the readings that do not fit the rest: each hypothesis (this reading mistyped so; these two swapped; this one
 * wrong somehow) is weighed against "nothing is wrong" by how likely the readings are under it; the best is taken as
 * true, and the rest is judged again without the fault.
 */
export function judge(wearer: Wearer): Judgement {
  let taken = takenOf(wearer);
  let weighed = hypotheses(taken);
  const blame = blameOf(weighed);
  const suspicions: Suspicion[] = [];
  while (taken.length >= FEWEST_READINGS && suspicions.length < MOST_SUSPICIONS) {
    const best = weighed.reduce<Suspicion | null>((a, b) => (a && a.evidence >= b.evidence ? a : b), null);
    if (!best || best.evidence < ENOUGH_EVIDENCE) break;
    suspicions.push(best);
    taken = taken.filter(({ measure }) => !best.measures.includes(measure.id));
    weighed = hypotheses(taken);
  }
  return { suspicions, blame };
}

function blameOf(weighed: readonly Suspicion[]): ReadonlyMap<MeasureId, number> {
  const blame = new Map<MeasureId, number>();
  for (const { measures, evidence } of weighed)
    for (const id of measures) blame.set(id, Math.max(blame.get(id) ?? -Infinity, evidence));
  return blame;
}

function hypotheses(taken: readonly Taken[]): Suspicion[] {
  if (taken.length === 0) return [];
  const standing = standingOf(taken);
  return taken.flatMap((_, at) => [...mistyped(standing, at), nameless(standing, at), ...swapped(standing, at)]);
}

function mistyped(standing: Standing, at: number): Suspicion[] {
  const reading = standing.taken[at];
  if (!reading) return [];
  return misreadings(reading.value)
    .filter(({ offer }) => offer >= SHORTEST_MM && offer <= LONGEST_MM)
    .map(({ code, offer, share }) => ({
      ...about(standing, at),
      code,
      measures: [reading.measure.id],
      offers: [offer],
      evidence: gainOf(standing, [{ at, by: Math.log(offer / reading.value) }]) + Math.log(WRONG_SHARE * share),
    }));
}

/** Wrong in no known way: as likely as anything near, against as likely as the others make it. */
function nameless(standing: Standing, at: number): Suspicion {
  const { off, stray } = leftOut(standing, at);
  const freedom = freedomOf(standing.taken);
  const usual = -Math.log(stray) - ((freedom + 1) / 2) * Math.log1p((off / stray) ** 2 / freedom);
  const wild = -Math.log(NAMELESS_SPREAD) - 0.5 * (off / NAMELESS_SPREAD) ** 2;
  const evidence = wild - usual + Math.log(WRONG_SHARE * NAMELESS_SHARE);
  return { ...about(standing, at), code: 'proportion', offers: [], evidence };
}

/** Each pair once, the one that fits worse first. */
function swapped(standing: Standing, at: number): Suspicion[] {
  const one = standing.taken[at];
  return standing.taken.slice(0, at).flatMap((other, otherAt): Suspicion[] => {
    if (!one) return [];
    const by = Math.log(other.value / one.value);
    const share = one.measure.region === other.measure.region ? SWAPPED_SHARE : SWAPPED_AFAR_SHARE;
    const gain = gainOf(standing, [
      { at, by },
      { at: otherAt, by: -by },
    ]);
    const worse = strangeness(standing, at) >= strangeness(standing, otherAt);
    const [first, second] = worse ? [one, other] : [other, one];
    return [
      {
        code: 'swapped',
        measures: [first.measure.id, second.measure.id],
        offers: [second.value, first.value],
        expected: about(standing, worse ? at : otherAt).expected,
        evidence: gain + Math.log(share),
      },
    ];
  });
}

const leftOut = ({ left }: Standing, at: number) => left[at] ?? { off: 0, stray: 1 };

function strangeness(standing: Standing, at: number): number {
  const { off, stray } = leftOut(standing, at);
  return Math.abs(off / stray);
}

function about(standing: Standing, at: number): Pick<Suspicion, 'measures' | 'expected'> {
  const reading = standing.taken[at];
  const { off } = leftOut(standing, at);
  return reading
    ? { measures: [reading.measure.id], expected: reading.value * Math.exp(-off) }
    : { measures: [], expected: 0 };
}
