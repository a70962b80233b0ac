import { dot, inverseOf } from './cholesky';
import { modelOf, type Taken, USUAL_WEIGHT } from './proportions';

/**
 * How readings stand to each other: the precision matrix of their departures (inverse of the covariance), that matrix
 * times the departures, and the square of how far the toy lies from the typical one, all on the log scale.
 */
export type Standing = {
  readonly taken: readonly Taken[];
  readonly precision: readonly (readonly number[])[];
  readonly pull: readonly number[];
  readonly distance: number;
  readonly left: readonly LeftOut[];
};

/**
 * What the other readings say of one: how far it lies off what they lead one to expect, and how far it may stray from
 * there (both log scale).
 */
export type LeftOut = { readonly off: number; readonly stray: number };

export function standingOf(taken: readonly Taken[]): Standing {
  const model = modelOf(taken);
  const precision = inverseOf(model.root);
  const departures = taken.map((each) => each.departure);
  const pull = precision.map((line) => dot(line, departures));
  const distance = dot(pull, departures);
  const freedom = freedomOf(taken);
  const left = pull.map((own, at): LeftOut => {
    const precise = precision[at]?.[at] ?? 1;
    const off = own / precise;
    const rest = Math.max(0, distance - off * own);
    return { off, stray: Math.sqrt((USUAL_WEIGHT + rest) / freedom / precise) };
  });
  return { taken, precision, pull, distance, left };
}

/**
 * How much likelier the readings would be (logarithm) had some of them been otherwise, each by its `change` on the log
 * scale. The likelihood is a multivariate t, so that a toy unlike others in everything convicts no single reading.
 */
export function gainOf(standing: Standing, changes: readonly Change[]): number {
  const { taken, precision, pull, distance } = standing;
  let changed = distance;
  for (const { at, by } of changes) {
    changed += 2 * by * (pull[at] ?? 0);
    for (const other of changes) changed += by * other.by * (precision[at]?.[other.at] ?? 0);
  }
  const before = USUAL_WEIGHT + distance;
  return ((freedomOf(taken) + 1) / 2) * Math.log(before / (USUAL_WEIGHT + Math.max(0, changed)));
}

export type Change = { readonly at: number; readonly by: number };

/** Degrees of freedom of one reading given the others. */
export const freedomOf = (taken: readonly Taken[]) => USUAL_WEIGHT + taken.length - 1;
