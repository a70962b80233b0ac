import type { Knowns, Taught } from './body';
import { type Build, builds, buildsOf } from './builds';
import { cholesky, dot, forward, type Matrix } from './cholesky';
import { type BodyKind, type Traits, usualTraits } from './kinds';
import type { Lean, Measure } from './measure';
import { findMeasure, type MeasureId, measures } from './measures';
import { traitShift } from './trait-shifts';
import type { Mm } from './units';

/**
 * One model of how toys vary serves every estimate and every suspicion. Within a build the logarithm of a measure is the
 * typical value's, plus the toy's size, plus what it leans on (big head, thin arms, long top …), plus a stray of its own;
 * all normal and independent. Fatter tails than normal come with `USUAL_WEIGHT`.
 */
const SIZE_SPREAD = 0.8;

/** The tape over fur strays by about this share, and never by less than this: marks, thickness of the thread. */
const READING_SPREAD = 0.015;
const READING_MM = 0.8;

/** The least evidence (as a number of readings) behind the usual spreads; more readings than this may overrule them. */
export const USUAL_WEIGHT = 8;

/** A build the maker names is taken to be right this often; a firm head is this many times commoner on a doll, and ears rarer. */
const NAMED_SHARE = 0.95;
const FIRM_HEAD_ODDS = 8;
const EARED_ODDS = 1 / 6;

export type Taken = { readonly measure: Measure<MeasureId>; readonly value: Mm };

/** What is known of a toy apart from its measures. */
export type Looks = { readonly kind: BodyKind; readonly traits: Traits; readonly taught?: Taught };

/** Readings of one toy as one build sees them, with their covariance factored: made once, asked many times. */
export type Model = {
  readonly build: Build;
  readonly taken: readonly Taken[];
  /** How far (log scale) each lies from the typical value. */
  readonly departures: readonly number[];
  readonly root: Matrix;
  /** Departures solved forward through the root: their squares add up to how far the toy lies from the typical one. */
  readonly whitened: readonly number[];
};

/** `doubt` widens every stray (log scale): for judging readings, where a toy may be unlike all those imagined. */
export function modelOf(build: Build, looks: Looks, taken: readonly Taken[], doubt = 0): Model {
  const table = tableOf(build);
  const places = taken.map(({ measure }) => placeOf(measure));
  const root = cholesky(
    taken.map(({ value }, at) => {
      const line = table[places[at] ?? 0] ?? [];
      const own = readingVariance(value) + doubt ** 2;
      return places.map((place, other) => (line[place] ?? 0) + (other === at ? own : 0));
    }),
  );
  const departures = taken.map(({ measure, value }) => Math.log(value / (typicalOf(build, measure, looks) ?? value)));
  return { build, taken, departures, root, whitened: forward(root, departures) };
}

export const readingVariance = (value: Mm) => READING_SPREAD ** 2 + (READING_MM / value) ** 2;

/**
 * How likely each model's build is, its readings being what they are (Bayes): shares before, times the likelihood, a
 * multivariate t with `USUAL_WEIGHT` degrees of freedom. Adds up to 1.
 */
export function weightsOf(models: readonly Model[], looks: Looks): readonly number[] {
  return shares(
    models.map(({ build, root, whitened }) => {
      const volume = root.reduce((total, line, at) => total + Math.log(line[at] ?? 1), 0);
      const n = whitened.length;
      const distance = dot(whitened, whitened);
      return Math.log(shareOf(build, looks)) - volume - ((USUAL_WEIGHT + n) / 2) * Math.log1p(distance / USUAL_WEIGHT);
    }),
  );
}

/** Weights from their logarithms. */
export function shares(logs: readonly number[]): readonly number[] {
  const most = Math.max(...logs);
  const plain = logs.map((each) => Math.exp(each - most));
  const total = plain.reduce((sum, each) => sum + each, 0);
  return plain.map((each) => each / total);
}

/** How likely a build is before anything is measured: by what the maker says, what she has, and the toy's head. */
function shareOf(build: Build, { kind, traits, taught }: Looks): number {
  const all = buildsOf(kind);
  if (all.some(({ id }) => id === traits.build))
    return build.id === traits.build ? NAMED_SHARE : (1 - NAMED_SHARE) / (all.length - 1);
  const firm = traits.head === 'firm' && build.head === 'firm' ? FIRM_HEAD_ODDS : 1;
  const eared = traits.ears !== 'none' && build.ears === 'none' ? EARED_ODDS : 1;
  return firm * eared * (taught?.[build.id]?.share ?? build.share);
}

/** Typical value of a measure in a build, for a toy's traits, mm; null where the kind has no such measure. */
export function typicalOf(build: Build, measure: Measure<MeasureId>, { traits, taught }: Looks): Mm | null {
  const typical = measure.typical[build.kind];
  if (!typical) return null;
  const usual = (typical / girthOf(build.kind)) * (build.groups[measure.group] ?? 1);
  const own = build.proportions[measure.id] ?? (isGirth(measure.id, build.kind) ? 1 : usual);
  const shift = Math.exp(taught?.[build.id]?.shifts[measure.id] ?? 0);
  return build.girth * own * shift * traitShift(measure.id, traits);
}

/** Every measure of a build's middling toy, as if read from it; none for a build nobody knows. */
export function typicalKnowns(id: string): Knowns {
  const build = builds.find((each) => each.id === id);
  if (!build) return {};
  const looks: Looks = { kind: build.kind, traits: usualTraits };
  return Object.fromEntries(
    measures.flatMap((measure) => {
      const value = typicalOf(build, measure, looks);
      return value ? [[measure.id, { value, from: 'tape', give: 0 }]] : [];
    }),
  );
}

const GIRTH: { readonly [K in BodyKind]: MeasureId } = {
  upright: 'chest-girth',
  'four-legged': 'chest-girth',
  round: 'body-girth',
};
const isGirth = (id: MeasureId, kind: BodyKind) => GIRTH[kind] === id;
const girthOf = (kind: BodyKind): Mm => findMeasure(GIRTH[kind])?.typical[kind] ?? 1;

/** Covariance of the logarithms of two measures within a build. */
export const covariance = (build: Build, a: Measure, b: Measure): number =>
  tableOf(build)[placeOf(a)]?.[placeOf(b)] ?? 0;

/** The same without the toy's size: how alike they are in shape alone. */
export const shapeCovariance = (build: Build, a: Measure, b: Measure): number =>
  covariance(build, a, b) - SIZE_SPREAD ** 2;

const places = new Map<string, number>(measures.map(({ id }, place) => [id, place]));
const placeOf = ({ id }: Measure): number => places.get(id) ?? 0;

const tables = new Map<string, Matrix>();

/** Every pair of measures in catalogue order; worked out once a build. */
function tableOf(build: Build): Matrix {
  const known = tables.get(build.id);
  if (known) return known;
  const table = measures.map((one) => measures.map((other) => shared(build, one, other)));
  tables.set(build.id, table);
  return table;
}

function shared({ sway }: Build, a: Measure, b: Measure): number {
  let total = SIZE_SPREAD ** 2 + (a.id === b.id ? a.spread ** 2 : 0);
  for (const lean of Object.keys(a.leans) as Lean[])
    total += (a.leans[lean] ?? 0) * (b.leans[lean] ?? 0) * (sway[lean] ?? 1) ** 2;
  return total;
}
