import type { Known, Knowns } from './body';
import type { BodyKind } from './kinds';
import type { Measure } from './measure';
import { findMeasure, type MeasureId } from './measures';
import type { Mm } from './units';

/**
 * One model of how toys vary serves every estimate: the logarithm of a measure is the typical value's, plus the toy's
 * size, plus its group's proportion (big head, thin arms), plus a stray of its own; all normal and independent.
 * An estimate is the conditional mean given the measures taken; its give, the conditional spread.
 */
const SIZE_SPREAD = 0.8;
const GROUP_SPREAD = 0.16;
/** The tape itself, and fur, stray by about this much. */
const READING_SPREAD = 0.015;

/** Give is stated at this many spreads: about nine toys in ten lie within. */
const GIVE_SPREADS = 1.6;

type Taken = {
  readonly measure: Measure<MeasureId>;
  readonly typical: Mm;
  readonly value: Mm;
};

const covariance = (a: Measure, b: Measure) =>
  SIZE_SPREAD ** 2 + (a.group === b.group ? GROUP_SPREAD ** 2 : 0) + (a.id === b.id ? a.spread ** 2 : 0);

/**
 * What a toy of `kind` most likely measures at `id`, judged by the measures `known` from tape or photo (others are
 * not looked at, nor is `id` itself). Null when nothing is known, or the kind has no such measure.
 */
export function estimate(kind: BodyKind, known: Knowns, id: MeasureId): Known | null {
  const measure = findMeasure(id);
  const typical = measure?.typical[kind];
  if (!measure || !typical) return null;
  const taken = takenOf(kind, known).filter((each) => each.measure.id !== id);
  if (taken.length === 0) return null;
  const root = cholesky(
    taken.map((a) => taken.map((b) => covariance(a.measure, b.measure) + (a === b ? READING_SPREAD ** 2 : 0))),
  );
  const reach = forward(
    root,
    taken.map((each) => covariance(each.measure, measure)),
  );
  const departure = forward(
    root,
    taken.map((each) => Math.log(each.value / each.typical)),
  );
  const shift = sum(reach.map((part, index) => part * (departure[index] ?? 0)));
  const variance = covariance(measure, measure) - sum(reach.map((part) => part * part));
  const value = typical * Math.exp(shift);
  return {
    value,
    from: 'estimate',
    give: value * GIVE_SPREADS * Math.sqrt(Math.max(variance, 0)),
  };
}

function takenOf(kind: BodyKind, known: Knowns): Taken[] {
  return Object.entries(known).flatMap(([id, each]) => {
    const measure = findMeasure(id);
    const typical = measure?.typical[kind];
    const counts = each && each.value > 0 && (each.from === 'tape' || each.from === 'photo');
    return measure && typical && counts ? [{ measure, typical, value: each.value }] : [];
  });
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Lower triangular root of a symmetric positive definite matrix. */
function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = [];
  matrix.forEach((line, i) => {
    const current: number[] = [];
    for (let j = 0; j <= i; j++) {
      const above = root[j] ?? current;
      const rest = (line[j] ?? 0) - sum(current.slice(0, j).map((value, k) => value * (above[k] ?? 0)));
      current.push(i === j ? Math.sqrt(rest) : rest / (above[j] ?? 1));
    }
    root.push(current);
  });
  return root;
}

/** Solves root · x = right by forward substitution. */
function forward(root: readonly (readonly number[])[], right: readonly number[]): number[] {
  const solved: number[] = [];
  root.forEach((line, i) => {
    const rest = (right[i] ?? 0) - sum(solved.map((value, k) => value * (line[k] ?? 0)));
    solved.push(rest / (line[i] ?? 1));
  });
  return solved;
}
