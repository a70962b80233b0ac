import { buildsOf } from './builds';
import type { Matrix } from './cholesky';
import { covariance, readingVariance, typicalOf } from './likeness';
import type { Measure } from './measure';
import { findMeasure, type MeasureId } from './measures';
import { likelyBuilds, type MeasuredBody, takenOf } from './proportions';

/** One number worth taking, and by what share it makes smaller how far the garment may stray (root of the mean square). */
export type Telling = { readonly measure: MeasureId; readonly shrinks: number };

/** A girth is cut as a front and a back: half of what it strays shows in each. */
const GIRTH_SHOWS = 0.5;
/** Less than this share is not worth a step. */
const LEAST_SHRINK = 0.01;

type Spot = {
  readonly measure: Measure<MeasureId>;
  readonly weight: number;
  readonly noise: number;
};

/**
 * Which of `asked` tell most of all that a garment `needs`, the most telling first, each with those before it taken: the
 * most `count` of them. Unsure is the sum of squares (mm) that the needed lengths may still stray by; of one build it does not
 * depend on what will be read, so that it can be told beforehand: the conditional variance of a normal (Bishop, Pattern Recognition
 * and Machine Learning, 2.3.1), the builds together taken as one normal of the same mean and covariance.
 */
export function mostTelling(
  wearer: MeasuredBody,
  {
    needs,
    asked,
    count,
  }: {
    readonly needs: readonly MeasureId[];
    readonly asked: readonly MeasureId[];
    readonly count: number;
  },
): readonly Telling[] {
  const spots = spotsOf(wearer, [
    ...new Set([...needs, ...asked, ...takenOf(wearer).map(({ measure }) => measure.id)]),
  ]);
  const at = new Map(spots.map(({ measure }, place) => [measure.id, place]));
  const needed = needs.flatMap((id) => at.get(id) ?? []);
  let table = mixed(wearer, spots);
  for (const { measure } of takenOf(wearer)) table = given(table, at.get(measure.id) ?? -1, spots);
  const unsure = (now: Matrix) => needed.reduce((sum, n) => sum + (spots[n]?.weight ?? 0) * (now[n]?.[n] ?? 0), 0);
  const told: Telling[] = [];
  const open = new Set(asked.filter((id) => at.has(id) && !takenOf(wearer).some(({ measure }) => measure.id === id)));
  while (told.length < count && open.size > 0) {
    const best = [...open]
      .map((id) => ({ id, now: given(table, at.get(id) ?? -1, spots) }))
      .map((each) => ({ ...each, left: unsure(each.now) }))
      .reduce((least, one) => (one.left < least.left ? one : least));
    const shrinks = 1 - Math.sqrt(Math.max(0, best.left) / unsure(table));
    if (!(shrinks >= LEAST_SHRINK)) break;
    told.push({ measure: best.id, shrinks });
    table = best.now;
    open.delete(best.id);
  }
  return told;
}

function spotsOf(wearer: MeasuredBody, ids: readonly MeasureId[]): readonly Spot[] {
  return ids.flatMap((id) => {
    const measure = findMeasure(id);
    const typical = measure?.typical[wearer.kind];
    if (!measure || !typical) return [];
    const shows = measure.nature === 'girth' ? GIRTH_SHOWS : 1;
    return [
      {
        measure,
        weight: (typical * shows) ** 2,
        noise: readingVariance(typical),
      },
    ];
  });
}

/** Covariance of the logarithms over all builds: within each, and of what is typical of each. */
function mixed(wearer: MeasuredBody, spots: readonly Spot[]): Matrix {
  const weights = likelyBuilds(wearer);
  const each = buildsOf(wearer.kind).map((build) => ({
    build,
    weight: weights.get(build.id) ?? 0,
    logs: spots.map(({ measure }) => Math.log(typicalOf(build, measure, wearer) ?? 1)),
  }));
  const means = spots.map((_, n) => each.reduce((sum, { weight, logs }) => sum + weight * (logs[n] ?? 0), 0));
  return spots.map((one, n) =>
    spots.map((other, m) =>
      each.reduce((sum, { build, weight, logs }) => {
        const apart = ((logs[n] ?? 0) - (means[n] ?? 0)) * ((logs[m] ?? 0) - (means[m] ?? 0));
        return sum + weight * (covariance(build, one.measure, other.measure) + apart);
      }, 0),
    ),
  );
}

/** The covariance left once the reading at a place is known. */
function given(table: Matrix, place: number, spots: readonly Spot[]): Matrix {
  const line = table[place];
  if (!line) return table;
  const own = (line[place] ?? 0) + (spots[place]?.noise ?? 0);
  return table.map((row, n) => row.map((each, m) => each - ((line[n] ?? 0) * (line[m] ?? 0)) / own));
}
