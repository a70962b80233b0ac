import type { Body, Taught } from './body';
import { type Build, builds } from './builds';
import { cholesky, dot, forward } from './cholesky';
import { covariance, readingVariance, shapeCovariance, type Taken, typicalOf } from './likeness';
import { findMeasure, type MeasureId, measures } from './measures';
import { likelyBuilds, takenOf } from './proportions';
import { suspect } from './suspicion';

/** Of how toys of one build differ, this share is that a maker's toys are alike: she makes or buys one sort. From memory. */
const ALIKE_SHARE = 0.5;
/** A maker's toys move a typical value no farther than this (log scale): a third. */
const MOST_SHIFT = Math.log(4 / 3);
/** More toys than this teach no more; the last count. */
const MOST_TOYS = 6;
/** The builds' own shares weigh as much as this many toys. */
const SHARES_WEIGH = 4;

/**
 * What a maker's toys (the last ones last) say of the next: worked out anew from what is in her store, never kept, so that a
 * toy taken away teaches no more. How common each build is, by the posterior mean of shares under a Dirichlet prior (Gelman
 * and others, Bayesian Data Analysis, 3rd ed., 3.4); how far its measures lie off, by the posterior mean of a normal with
 * known covariance, whose mean is normal itself (there, 3.5; Bishop, Pattern Recognition and Machine Learning, 2.3.3).
 * Doubted readings teach nothing.
 */
export function teach(toys: readonly Body[]): Taught {
  const last = toys
    .map(cleared)
    .filter((toy) => takenOf(toy).length > 0)
    .slice(-MOST_TOYS);
  const sorted = last.map((toy) => ({ toy, weights: likelyBuilds(toy) }));
  return Object.fromEntries(
    builds.flatMap((build) => {
      const alike = sorted.filter(({ toy }) => toy.kind === build.kind);
      if (alike.length === 0) return [];
      const weight = alike.reduce((sum, { weights }) => sum + (weights.get(build.id) ?? 0), 0);
      const own = alike.filter(({ weights }) => likeliest(weights) === build.id).map(({ toy }) => toy);
      const share = (SHARES_WEIGH * build.share + weight) / (SHARES_WEIGH + alike.length);
      return [[build.id, { share, shifts: shiftsOf(build, own) }] as const];
    }),
  );
}

function cleared(toy: Body): Body {
  const doubted = new Set<string>(suspect(toy).suspicions.flatMap((suspicion) => suspicion.measures));
  const { taught: _, ...rest } = toy;
  return { ...rest, sizes: Object.fromEntries(Object.entries(toy.sizes).filter(([id]) => !doubted.has(id))) };
}

const likeliest = (weights: ReadonlyMap<string, number>) =>
  [...weights].reduce<readonly [string, number]>((most, one) => (one[1] > most[1] ? one : most), ['', 0])[0];

type Read = Taken & { readonly toy: number; readonly departure: number };

/** How far the mean of a build lies off for this maker, by all readings of her toys of it. */
function shiftsOf(build: Build, toys: readonly Body[]): Taught[string]['shifts'] {
  const read = toys.flatMap((toy, n) =>
    takenOf(toy).map((each): Read => {
      const typical = typicalOf(build, each.measure, { kind: toy.kind, traits: toy.traits }) ?? each.value;
      return { ...each, toy: n, departure: Math.log(each.value / typical) };
    }),
  );
  if (read.length === 0) return {};
  const root = cholesky(read.map((a) => read.map((b) => between(build, a, b))));
  const pulled = forward(
    root,
    read.map(({ departure }) => departure),
  );
  return Object.fromEntries(
    measures.flatMap(({ id }): [MeasureId, number][] => {
      const measure = findMeasure(id);
      if (!measure?.typical[build.kind]) return [];
      const reach = read.map((each) => ALIKE_SHARE * shapeCovariance(build, each.measure, measure));
      const shift = dot(forward(root, reach), pulled);
      return [[id, Math.max(-MOST_SHIFT, Math.min(MOST_SHIFT, shift))]];
    }),
  );
}

/** Two readings of one toy share its size and shape; of two toys, what is alike in all of them. */
function between(build: Build, a: Read, b: Read): number {
  if (a.toy !== b.toy) return ALIKE_SHARE * shapeCovariance(build, a.measure, b.measure);
  return covariance(build, a.measure, b.measure) + (a === b ? readingVariance(a.value) : 0);
}
