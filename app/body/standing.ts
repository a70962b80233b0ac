import { buildsOf } from './builds';
import { dot, inverseOf } from './cholesky';
import { type Looks, type Model, modelOf, shares, type Taken, USUAL_WEIGHT, weightsOf } from './likeness';

/**
 * How readings stand to each other as one build sees them: the precision matrix of their departures (inverse of the
 * covariance), that matrix times the departures, and the square of how far the toy lies from the typical one, all on the
 * log scale.
 */
type Standing = {
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

/** The readings as every build sees them, with how likely (logarithm) each build is. */
export type Standings = {
  readonly taken: readonly Taken[];
  readonly each: readonly { readonly standing: Standing; readonly weight: number }[];
};

/**
 * Nobody knows how real toys vary; a reading is judged as if each strayed this much more than imagined. It costs little:
 * a slip worth finding is a factor of two.
 */
const DOUBT = 0.1;
/** A build this unlikely cannot explain the readings even with one of them wrong. */
const LEAST_WEIGHT = 1e-7;

export function standingsOf(looks: Looks, taken: readonly Taken[]): Standings {
  const models = buildsOf(looks.kind).map((build) => modelOf(build, looks, taken, DOUBT));
  const weights = weightsOf(models, looks);
  const each = models.flatMap((model, at) => {
    const weight = weights[at] ?? 0;
    return weight < LEAST_WEIGHT ? [] : [{ standing: standingOf(model), weight: Math.log(weight) }];
  });
  return { taken, each };
}

function standingOf({ taken, root, departures }: Model): Standing {
  const precision = inverseOf(root);
  const pull = precision.map((line) => dot(line, departures));
  const distance = dot(pull, departures);
  const freedom = freedomOf(taken);
  const left = pull.map((own, at): LeftOut => {
    const precise = precision[at]?.[at] ?? 1;
    const off = own / precise;
    const rest = Math.max(0, distance - off * own);
    return { off, stray: Math.sqrt((USUAL_WEIGHT + rest) / freedom / precise) };
  });
  return { precision, pull, distance, left };
}

/**
 * How much likelier the readings would be (logarithm) had one of them been otherwise by `by` on the log scale. The
 * likelihood is a multivariate t, so that a toy unlike others in everything convicts no single reading.
 */
export function changeGain({ taken, each }: Standings, at: number, by: number): number {
  return together(each, (standing) =>
    gain(standing, taken, 2 * by * pullOn(standing, at) + by * by * tie(standing, at, at)),
  );
}

/** The same, had two of them been read into each other's places. */
export function swapGain({ taken, each }: Standings, at: number, otherAt: number): number {
  const [one, other] = [taken[at], taken[otherAt]];
  const by = one && other ? Math.log(other.value / one.value) : 0;
  return together(each, (standing) => {
    const pulls = 2 * by * (pullOn(standing, at) - pullOn(standing, otherAt));
    const ties = tie(standing, at, at) + tie(standing, otherAt, otherAt) - 2 * tie(standing, at, otherAt);
    return gain(standing, taken, pulls + by * by * ties);
  });
}

/** How much likelier (logarithm) a reading is under another density of how far it lies off, than as the others make it. */
export function otherwise({ taken, each }: Standings, at: number, density: (off: number) => number): number {
  return together(each, ({ left }) => density(left[at]?.off ?? 0) - usual(left[at] ?? FITTING, freedomOf(taken)));
}

/** What the other readings lead one to expect of one, as a factor of what it is; and how many strays off it lies. */
export function expectedOf(
  { taken, each }: Standings,
  at: number,
): { readonly factor: number; readonly strays: number } {
  const freedom = freedomOf(taken);
  const weights = shares(each.map(({ weight, standing }) => weight - usual(standing.left[at] ?? FITTING, freedom)));
  const mean = (of: (left: LeftOut) => number) =>
    each.reduce((total, { standing }, n) => total + (weights[n] ?? 0) * of(standing.left[at] ?? FITTING), 0);
  return { factor: Math.exp(-mean(({ off }) => off)), strays: Math.abs(mean(({ off, stray }) => off / stray)) };
}

const FITTING: LeftOut = { off: 0, stray: 1 };

/** Log density (but for a constant) of a reading given the others: Student's t. */
const usual = ({ off, stray }: LeftOut, freedom: number) =>
  -Math.log(stray) - ((freedom + 1) / 2) * Math.log1p((off / stray) ** 2 / freedom);

/** The builds' gains together: each as likely as its build. */
function together(each: Standings['each'], of: (standing: Standing) => number): number {
  let most = Number.NEGATIVE_INFINITY;
  const logs = each.map(({ standing, weight }) => {
    const log = weight + of(standing);
    most = Math.max(most, log);
    return log;
  });
  return most + Math.log(logs.reduce((total, log) => total + Math.exp(log - most), 0));
}

function gain({ distance }: Standing, taken: readonly Taken[], further: number): number {
  const [before, after] = [USUAL_WEIGHT + distance, USUAL_WEIGHT + Math.max(0, distance + further)];
  return ((USUAL_WEIGHT + taken.length) / 2) * Math.log(before / after);
}

const pullOn = ({ pull }: Standing, at: number) => pull[at] ?? 0;
const tie = ({ precision }: Standing, at: number, other: number) => precision[at]?.[other] ?? 0;

/** Degrees of freedom of one reading given the others. */
const freedomOf = (taken: readonly Taken[]) => USUAL_WEIGHT + taken.length - 1;
