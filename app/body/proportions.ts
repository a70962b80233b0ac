import type { Body, Known, Knowns } from './body';
import { buildsOf } from './builds';
import { dot, forward } from './cholesky';
import { byFormula } from './formulas';
import {
  covariance,
  type Looks,
  type Model,
  modelOf,
  type Taken,
  typicalOf,
  USUAL_WEIGHT,
  weightsOf,
} from './likeness';
import { findMeasure, type MeasureId, measures } from './measures';
import { LONGEST_MM } from './units';

/** Give is stated at this many spreads: about nine toys in ten lie within. */
const GIVE_SPREADS = 1.65;
/** A build less likely than this tells nothing worth hearing. */
const LEAST_WEIGHT = 1e-4;

export type MeasuredBody = Pick<Body, 'kind' | 'traits' | 'sizes' | 'taught'>;

/** The builds a toy may be of, as its readings see them, and how likely each is. */
type Mixture = readonly { readonly model: Model; readonly weight: number }[];

/**
 * What a toy most likely measures at `id`, judged by its other measures from tape or photo (`id` itself and what is
 * derived or estimated are not looked at). Null when nothing else is known, or the kind has no such measure.
 */
export function estimate(toy: MeasuredBody, id: MeasureId): Known | null {
  const taken = takenOf(toy).filter((each) => each.measure.id !== id);
  return taken.length > 0 ? (byFormula(toy.sizes, id) ?? estimateFrom(toy, mixtureOf(toy, taken), id)) : null;
}

/** Estimates of every measure of the kind that `toy` does not know. */
export function estimates(toy: MeasuredBody): Knowns {
  const taken = takenOf(toy);
  if (taken.length === 0) return {};
  const mixture = mixtureOf(toy, taken);
  return Object.fromEntries(
    measures.flatMap(({ id }) => {
      const guess = toy.sizes[id] ? null : (byFormula(toy.sizes, id) ?? estimateFrom(toy, mixture, id));
      return guess ? [[id, guess]] : [];
    }),
  );
}

/** How likely a toy is of each build of its kind, by name; nothing measured, the shares of the builds. */
export function likelyBuilds(toy: MeasuredBody): ReadonlyMap<string, number> {
  return new Map(mixtureOf(toy, takenOf(toy), 0).map(({ model, weight }) => [model.build.id, weight]));
}

function mixtureOf(looks: Looks, taken: readonly Taken[], least = LEAST_WEIGHT): Mixture {
  const models = buildsOf(looks.kind).map((build) => modelOf(build, looks, taken));
  const weights = weightsOf(models, looks);
  return models.map((model, at) => ({ model, weight: weights[at] ?? 0 })).filter(({ weight }) => weight >= least);
}

/** The mean over the builds, on the log scale; what they say apart from each other adds to the give. */
function estimateFrom(looks: Looks, mixture: Mixture, id: MeasureId): Known | null {
  const each = mixture.flatMap(({ model, weight }) => {
    const guess = guessFrom(looks, model, id);
    return guess ? [{ ...guess, weight }] : [];
  });
  const total = each.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0) return null;
  const mean = each.reduce((sum, { log, weight }) => sum + weight * log, 0) / total;
  const variance =
    each.reduce((sum, guess) => sum + guess.weight * (guess.variance + (guess.log - mean) ** 2), 0) / total;
  const value = Math.exp(mean);
  return { value, from: 'estimate', give: value * GIVE_SPREADS * Math.sqrt(variance) };
}

function guessFrom(looks: Looks, model: Model, id: MeasureId): { log: number; variance: number } | null {
  const measure = findMeasure(id);
  const typical = measure && typicalOf(model.build, measure, looks);
  if (!typical) return null;
  const reach = forward(
    model.root,
    model.taken.map((each) => covariance(model.build, each.measure, measure)),
  );
  const variance = Math.max(0, covariance(model.build, measure, measure) - dot(reach, reach));
  return { log: Math.log(typical) + dot(reach, model.whitened), variance: variance * unusualness(model) ** 2 };
}

/** How many times wider than usual a toy's proportions stray, judged by all its readings: 1 for a usual one, never less. */
function unusualness({ whitened }: Model): number {
  return Math.max(1, Math.sqrt((USUAL_WEIGHT + dot(whitened, whitened)) / (USUAL_WEIGHT + whitened.length)));
}

/** The readings the model can use: from tape or photo, and a length at all. */
export function takenOf({ kind, sizes }: MeasuredBody): readonly Taken[] {
  return measures.flatMap((measure): Taken[] => {
    const known = sizes[measure.id];
    const counts = known && (known.from === 'tape' || known.from === 'photo') && kind in measure.typical;
    return counts && known.value > 0 && known.value <= LONGEST_MM ? [{ measure, value: known.value }] : [];
  });
}
