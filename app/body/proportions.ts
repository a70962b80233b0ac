import type { Body, Known, Knowns } from './body';
import { cholesky, dot, forward, type Matrix } from './cholesky';
import { byFormula } from './formulas';
import type { BodyKind, Traits } from './kinds';
import type { Lean, Measure } from './measure';
import { findMeasure, type MeasureId, measures } from './measures';
import { traitShift } from './trait-shifts';
import { LONGEST_MM, type Mm } from './units';

/**
 * One model of how toys vary serves every estimate and every suspicion: the logarithm of a measure is the typical
 * value's, plus the toy's size, plus what it leans on (big head, thin arms, long top …), plus a stray of its own; all
 * normal and independent. Fatter tails than normal come with `unusualness`: a toy whose other measures stray a lot is
 * granted more stray in each.
 */
const SIZE_SPREAD = 0.8;

/** The tape over fur strays by about this share, and never by less than this: marks, thickness of the thread. */
const READING_SPREAD = 0.015;
const READING_MM = 0.8;

/** Give is stated at this many spreads: about nine toys in ten lie within. */
const GIVE_SPREADS = 1.65;

/** The least evidence (as a number of readings) behind the usual spreads; more readings than this may overrule them. */
export const USUAL_WEIGHT = 8;

export type Wearer = Pick<Body, 'kind' | 'traits' | 'sizes'>;

/** One reading as the model sees it: how far (log scale) it lies from the typical value of its kind and traits. */
export type Taken = { readonly measure: Measure<MeasureId>; readonly value: Mm; readonly departure: number };

/** Readings of one toy with their covariance factored: made once, asked many times. */
export type Model = {
  readonly taken: readonly Taken[];
  readonly root: Matrix;
  /** Departures solved forward through the root: their squares add up to how far the toy lies from the typical one. */
  readonly whitened: readonly number[];
};

/**
 * What a toy most likely measures at `id`, judged by its other measures from tape or photo (`id` itself and what is
 * derived or estimated are not looked at). Null when nothing else is known, or the kind has no such measure.
 */
export function estimate(wearer: Wearer, id: MeasureId): Known | null {
  const taken = takenOf(wearer).filter((each) => each.measure.id !== id);
  return taken.length > 0 ? (byFormula(wearer.sizes, id) ?? estimateFrom(wearer, modelOf(taken), id)) : null;
}

/** Estimates of every measure of the kind that `wearer` does not know. */
export function estimates(wearer: Wearer): Knowns {
  const taken = takenOf(wearer);
  if (taken.length === 0) return {};
  const model = modelOf(taken);
  return Object.fromEntries(
    measures.flatMap(({ id }) => {
      const guess = wearer.sizes[id] ? null : (byFormula(wearer.sizes, id) ?? estimateFrom(wearer, model, id));
      return guess ? [[id, guess]] : [];
    }),
  );
}

function estimateFrom({ kind, traits }: Wearer, model: Model, id: MeasureId): Known | null {
  const measure = findMeasure(id);
  const typical = measure && typicalOf(measure, kind, traits);
  if (!typical) return null;
  const reach = forward(
    model.root,
    model.taken.map((each) => covariance(each.measure, measure)),
  );
  const value = typical * Math.exp(dot(reach, model.whitened));
  const variance = Math.max(0, covariance(measure, measure) - dot(reach, reach));
  return { value, from: 'estimate', give: value * GIVE_SPREADS * Math.sqrt(variance) * unusualness(model) };
}

/** How many times wider than usual a toy's proportions stray, judged by all its readings: 1 for a usual one, never less. */
function unusualness({ whitened }: Model): number {
  return Math.max(1, Math.sqrt((USUAL_WEIGHT + dot(whitened, whitened)) / (USUAL_WEIGHT + whitened.length)));
}

/** The readings the model can use: from tape or photo, and a length at all. */
export function takenOf({ kind, traits, sizes }: Wearer): readonly Taken[] {
  return measures.flatMap((measure): Taken[] => {
    const known = sizes[measure.id];
    const typical = typicalOf(measure, kind, traits);
    const counts = known && (known.from === 'tape' || known.from === 'photo');
    if (!counts || !typical || !(known.value > 0 && known.value <= LONGEST_MM)) return [];
    return [{ measure, value: known.value, departure: Math.log(known.value / typical) }];
  });
}

/** `doubt` widens every stray (log scale): for judging readings, where a toy may be unlike all those imagined. */
export function modelOf(taken: readonly Taken[], doubt = 0): Model {
  const root = cholesky(
    taken.map((a) =>
      taken.map((b) => covariance(a.measure, b.measure) + (a === b ? readingVariance(a.value) + doubt ** 2 : 0)),
    ),
  );
  return {
    taken,
    root,
    whitened: forward(
      root,
      taken.map((each) => each.departure),
    ),
  };
}

const readingVariance = (value: Mm) => READING_SPREAD ** 2 + (READING_MM / value) ** 2;

/** Typical value of a measure for a kind and its traits, mm; null where the kind has no such measure. */
export function typicalOf(measure: Measure<MeasureId>, kind: BodyKind, traits: Traits): Mm | null {
  const typical = measure.typical[kind];
  return typical ? typical * traitShift(measure.id, traits) : null;
}

/** Covariance of the logarithms of two measures; worked out once for all pairs. */
function covariance(a: Measure, b: Measure): number {
  table ??= new Map(measures.map((one) => [one.id, new Map(measures.map((other) => [other.id, shared(one, other)]))]));
  return table.get(a.id)?.get(b.id) ?? 0;
}

let table: Map<string, Map<string, number>> | undefined;

function shared(a: Measure, b: Measure): number {
  let total = SIZE_SPREAD ** 2 + (a.id === b.id ? a.spread ** 2 : 0);
  for (const lean of Object.keys(a.leans) as Lean[]) total += (a.leans[lean] ?? 0) * (b.leans[lean] ?? 0);
  return total;
}
