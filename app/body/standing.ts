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

/**
 * Nobody knows how real toys vary; a reading is judged as if each strayed this much more than imagined. It costs little:
 * a slip worth finding is a factor of two.
 */
const DOUBT = 0.1;

export function standingOf(taken: readonly Taken[]): Standing {
  const model = modelOf(taken, DOUBT);
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
 * How much likelier the readings would be (logarithm) had one of them been otherwise by `by` on the log scale. The
 * likelihood is a multivariate t, so that a toy unlike others in everything convicts no single reading.
 */
export function changeGain(standing: Standing, at: number, by: number): number {
  return gain(standing, 2 * by * pullOn(standing, at) + by * by * tie(standing, at, at));
}

/** The same, had two of them been read into each other's places. */
export function swapGain(standing: Standing, at: number, otherAt: number): number {
  const [one, other] = [standing.taken[at], standing.taken[otherAt]];
  const by = one && other ? Math.log(other.value / one.value) : 0;
  const pulls = 2 * by * (pullOn(standing, at) - pullOn(standing, otherAt));
  const ties = tie(standing, at, at) + tie(standing, otherAt, otherAt) - 2 * tie(standing, at, otherAt);
  return gain(standing, pulls + by * by * ties);
}

function gain({ taken, distance }: Standing, further: number): number {
  const [before, after] = [USUAL_WEIGHT + distance, USUAL_WEIGHT + Math.max(0, distance + further)];
  return ((freedomOf(taken) + 1) / 2) * Math.log(before / after);
}

const pullOn = ({ pull }: Standing, at: number) => pull[at] ?? 0;
const tie = ({ precision }: Standing, at: number, other: number) => precision[at]?.[other] ?? 0;

/** Degrees of freedom of one reading given the others. */
export const freedomOf = (taken: readonly Taken[]) => USUAL_WEIGHT + taken.length - 1;
