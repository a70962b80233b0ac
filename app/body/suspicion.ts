import type { MeasureId } from './measures';
import { type MisreadingCode, misreadings } from './misreadings';
import { takenOf, type Wearer } from './proportions';
import { changeGain, freedomOf, type Standing, standingOf, swapGain } from './standing';
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

/** About one reading in a hundred is wrong, and one pair of neighbours in five hundred swapped, others more rarely: from memory. */
const WRONG_SHARE = 0.01;
const SWAPPED_NEAR = Math.log(0.002);
const SWAPPED_AFAR = Math.log(0.0002);
/** Of the wrong ones, this share is wrong in a way that has no name. */
const NAMELESS_SHARE = 0.3;
/** How far a reading that is wrong in no known way may lie off (log scale): anywhere between a third and threefold, mostly. */
const NAMELESS_SPREAD = 1.2;
/** Speak up when it is this many times likelier (as a logarithm) that something is wrong. */
const ENOUGH_EVIDENCE = -2;
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
  let standing = standingOf(taken);
  let each = taken.map((_, at) => ofOne(standing, at));
  const blame = new Map(taken.map(({ measure }, at) => [measure.id, each[at]?.evidence ?? 0]));
  const suspicions: Suspicion[] = [];
  while (taken.length >= FEWEST_READINGS && suspicions.length < MOST_SUSPICIONS) {
    const found = bestOf([...each, ofPairs(standing)]);
    if (!found || found.evidence < ENOUGH_EVIDENCE) break;
    const suspicion = told(standing, found);
    suspicions.push(suspicion);
    taken = taken.filter(({ measure }) => !suspicion.measures.includes(measure.id));
    standing = standingOf(taken);
    each = taken.map((_, at) => ofOne(standing, at));
  }
  return { suspicions, blame };
}

/** A hypothesis about the reading at a place, or about two. */
type Hypothesis = Pick<Suspicion, 'code' | 'evidence'> & {
  readonly at: number;
  readonly offer?: Mm;
  readonly otherAt?: number;
};

const bestOf = (all: readonly (Hypothesis | null)[]) =>
  all.reduce((best, one) => (best && (!one || best.evidence >= one.evidence) ? best : one), null);

/** The likeliest fault of one reading by itself. */
function ofOne(standing: Standing, at: number): Hypothesis {
  let best: Hypothesis = { code: 'proportion', at, evidence: nameless(standing, at) };
  const value = standing.taken[at]?.value ?? 0;
  for (const { code, offer, share } of misreadings(value)) {
    if (offer < SHORTEST_MM || offer > LONGEST_MM) continue;
    const evidence = changeGain(standing, at, Math.log(offer / value)) + Math.log(WRONG_SHARE * share);
    if (evidence > best.evidence) best = { code, at, offer, evidence };
  }
  return best;
}

/** Wrong in no known way: as likely as anything near, against as likely as the others make it. */
function nameless({ left, taken }: Standing, at: number): number {
  const { off, stray } = left[at] ?? FITTING;
  const freedom = freedomOf(taken);
  const usual = -Math.log(stray) - ((freedom + 1) / 2) * Math.log1p((off / stray) ** 2 / freedom);
  const wild = -Math.log(NAMELESS_SPREAD) - 0.5 * (off / NAMELESS_SPREAD) ** 2;
  return wild - usual + Math.log(WRONG_SHARE * NAMELESS_SHARE);
}

/** The likeliest two to have been read into each other's places, the one that fits worse first. */
function ofPairs(standing: Standing): Hypothesis | null {
  let best: Hypothesis | null = null;
  standing.taken.forEach(({ measure }, at) => {
    for (let otherAt = 0; otherAt < at; otherAt++) {
      const near = standing.taken[otherAt]?.measure.region === measure.region;
      const evidence = swapGain(standing, at, otherAt) + (near ? SWAPPED_NEAR : SWAPPED_AFAR);
      if (best && best.evidence >= evidence) continue;
      const worse = strangeness(standing, at) >= strangeness(standing, otherAt);
      best = { code: 'swapped', evidence, at: worse ? at : otherAt, otherAt: worse ? otherAt : at };
    }
  });
  return best;
}

const FITTING = { off: 0, stray: 1 };

function strangeness({ left }: Standing, at: number): number {
  const { off, stray } = left[at] ?? FITTING;
  return Math.abs(off / stray);
}

function told({ taken, left }: Standing, { code, evidence, at, offer, otherAt }: Hypothesis): Suspicion {
  const readings = [at, otherAt].flatMap((place) => (place === undefined ? [] : (taken[place] ?? [])));
  const values = readings.map(({ value }) => value);
  const offers = code === 'swapped' ? values.reverse() : offer === undefined ? [] : [offer];
  const expected = (taken[at]?.value ?? 0) * Math.exp(-(left[at]?.off ?? 0));
  return { code, evidence, measures: readings.map(({ measure }) => measure.id), offers, expected };
}
