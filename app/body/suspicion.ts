import type { MeasureId } from './measures';
import { type MisreadingCode, misreadings } from './misreadings';
import { type MeasuredBody, takenOf } from './proportions';
import { changeGain, expectedOf, otherwise, type Standings, standingsOf, swapGain } from './standing';
import { LONGEST_MM, type Mm, SHORTEST_MM } from './units';

/**
 * One reading, or a pair, that the others speak against. `offers` is what was meant, where that is all but sure;
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
const NAMELESS_SHARE = 0.2;
/** How far a reading that is wrong in no known way may lie off (log scale): anywhere between a third and threefold, mostly. */
const NAMELESS_SPREAD = 1.2;
/** Speak up when it is this many times likelier (as a logarithm) that something is wrong. */
const ENOUGH_EVIDENCE = -1.8;
/** A correction is offered only where what was meant is known this surely. */
const SURE = 0.8;
/** Two offers this close (log scale) are the same for anyone who sews. */
const SAME_OFFER = 0.025;
/** One reading agrees with nothing. */
const FEWEST_READINGS = 2;
/** Two this close (log scale) may be swapped without harm. */
const ALIKE = 0.2;
/** Of these either is the longer as the toy is built, so that no order tells they were swapped: a level neck, and one held high. */
const EITHER_WAY: readonly (readonly MeasureId[])[] = [['nape-to-leg', 'neck-to-leg']];
/** A reading no farther off than this many strays fits the rest. */
const FITS_WITHIN = 1;
/** After this many wrong readings the toy is simply unlike others. */
const MOST_SUSPICIONS = 3;

/** What the readings say of each other; `blame` is how much the rest speaks against each, for whatever reason (logarithm). */
export type Judgement = { readonly suspicions: readonly Suspicion[]; readonly blame: ReadonlyMap<MeasureId, number> };

/**
 * Finds the readings that do not fit the rest: each hypothesis (this reading mistyped so; these two swapped; this one
 * wrong somehow) is weighed against "nothing is wrong" by how likely the readings are under it. Where all of them together
 * outweigh it, the reading with the most against it is taken as wrong, and the rest is judged again without it.
 */
export function suspect(toy: MeasuredBody): Judgement {
  const known = judgements.get(toy);
  if (known) return known;
  const judgement = weighed(toy);
  judgements.set(toy, judgement);
  return judgement;
}

/** A body never changes; many garments are drafted for one. */
const judgements = new WeakMap<MeasuredBody, Judgement>();

function weighed(toy: MeasuredBody): Judgement {
  let taken = takenOf(toy);
  let standings = standingsOf(toy, taken);
  let all = hypothesesOf(standings);
  const blame = new Map(taken.map(({ measure }, at) => [measure.id, sum(all.filter((one) => one.at === at))]));
  const suspicions: Suspicion[] = [];
  while (taken.length >= FEWEST_READINGS && suspicions.length < MOST_SUSPICIONS) {
    const suspicion = likeliest(standings, all);
    if (!suspicion || suspicion.evidence < ENOUGH_EVIDENCE) break;
    suspicions.push(suspicion);
    taken = taken.filter(({ measure }) => !suspicion.measures.includes(measure.id));
    standings = standingsOf(toy, taken);
    all = hypothesesOf(standings);
  }
  return { suspicions, blame };
}

/** A hypothesis about the reading at a place, or about two; its evidence is a logarithm. */
type Hypothesis = Pick<Suspicion, 'code' | 'evidence'> & {
  readonly at: number;
  readonly offer?: Mm;
  readonly otherAt?: number;
};

function hypothesesOf(standings: Standings): readonly Hypothesis[] {
  const strays = standings.taken.map((_, at) => expectedOf(standings, at).strays);
  const alone = standings.taken.flatMap((_, at) => ofOne(standings, at, (strays[at] ?? 0) > FITS_WITHIN));
  return [...alone, ...ofPairs(standings, strays)];
}

/** The faults one reading may have by itself; a reading that fits is not asked what else it may have been. */
function ofOne(standings: Standings, at: number, strange: boolean): Hypothesis[] {
  const { measure, value = 0 } = standings.taken[at] ?? {};
  const named =
    measure && strange
      ? misreadings(value, measure).filter(({ offer }) => offer >= SHORTEST_MM && offer <= LONGEST_MM)
      : [];
  return [
    { code: 'proportion', at, evidence: otherwise(standings, at, wild) + Math.log(WRONG_SHARE * NAMELESS_SHARE) },
    ...named.map(({ code, offer, share }): Hypothesis => {
      const evidence = changeGain(standings, at, Math.log(offer / value)) + Math.log(WRONG_SHARE * share);
      return { code, at, offer, evidence };
    }),
  ];
}

/** Wrong in no known way: as likely as anything near. */
const wild = (off: number) => -Math.log(NAMELESS_SPREAD) - 0.5 * (off / NAMELESS_SPREAD) ** 2;

/** Any two may have been read into each other's places; the one that fits worse first. */
function ofPairs(standings: Standings, strays: readonly number[]): Hypothesis[] {
  const found: Hypothesis[] = [];
  standings.taken.forEach(({ measure, value }, at) => {
    for (let otherAt = 0; otherAt < at; otherAt++) {
      const other = standings.taken[otherAt];
      if (!other || Math.abs(Math.log(other.value / value)) < ALIKE) continue;
      if (EITHER_WAY.some((pair) => pair.includes(measure.id) && pair.includes(other.measure.id))) continue;
      if (Math.max(strays[at] ?? 0, strays[otherAt] ?? 0) < FITS_WITHIN) continue;
      const near = other.measure.region === measure.region;
      const evidence = swapGain(standings, at, otherAt) + (near ? SWAPPED_NEAR : SWAPPED_AFAR);
      const worse = (strays[at] ?? 0) >= (strays[otherAt] ?? 0);
      found.push({ code: 'swapped', evidence, at: worse ? at : otherAt, otherAt: worse ? otherAt : at });
    }
  });
  return found;
}

const best = (all: readonly Hypothesis[]) =>
  all.reduce<Hypothesis | undefined>((most, one) => (most && most.evidence >= one.evidence ? most : one), undefined);

/** Logarithm of how likely any of them is. */
function sum(all: readonly Hypothesis[]): number {
  const most = best(all)?.evidence ?? Number.NEGATIVE_INFINITY;
  return most + Math.log(all.reduce((total, { evidence }) => total + Math.exp(evidence - most), 0));
}

/** What is most likely wrong: two readings swapped, or one reading; and what was meant, if that is all but sure. */
function likeliest(standings: Standings, all: readonly Hypothesis[]): Suspicion | null {
  const evidence = sum(all);
  const leader = best(
    standings.taken.map((_, at) => ({ code: 'proportion', at, evidence: sum(alone(all, at)) }) as const),
  );
  const pair = best(all.filter(({ code }) => code === 'swapped'));
  if (!leader) return null;
  if (pair && pair.evidence > leader.evidence)
    return told(standings, pair, evidence, pair.evidence - evidence > Math.log(SURE));
  const own = alone(all, leader.at);
  const meant = best(own);
  if (meant?.offer === undefined) return told(standings, leader, evidence, false);
  const { offer } = meant;
  const same = own.filter((one) => one.offer !== undefined && Math.abs(Math.log(one.offer / offer)) < SAME_OFFER);
  const sure = sum(same) - evidence > Math.log(SURE);
  return told(standings, sure ? meant : leader, evidence, sure);
}

const alone = (all: readonly Hypothesis[], at: number) =>
  all.filter((one) => one.at === at && one.otherAt === undefined);

function told(
  standings: Standings,
  { code, at, offer, otherAt }: Hypothesis,
  evidence: number,
  sure: boolean,
): Suspicion {
  const readings = [at, otherAt].flatMap((place) => (place === undefined ? [] : (standings.taken[place] ?? [])));
  const values = readings.map(({ value }) => value);
  const offers = !sure ? [] : code === 'swapped' ? [...values].reverse() : offer === undefined ? [] : [offer];
  const expected = (standings.taken[at]?.value ?? 0) * expectedOf(standings, at).factor;
  return { code, evidence, measures: readings.map(({ measure }) => measure.id), offers, expected };
}
