import type { Job } from './job';

/** However small two pieces are, their overlap weighs something. */
const LIGHTEST = 0.01;

/**
 * What an overlap of every two pieces weighs at least, one for a usual piece on another: by the geometric mean of their
 * areas. Large pieces thus find their places, and small ones make way. What is fixed counts as a usual piece.
 */
export function leastWeights({ stock, pieces, fixed = [] }: Job): Float64Array {
  const areas = pieces.map(({ turns }) => stock.shapes[turns[0] ?? 0]?.area ?? 0);
  const usual = areas.reduce((sum, area) => sum + area, 0) / areas.length;
  const sizes = [...areas.map((area) => Math.sqrt(area / usual)), ...fixed.map(() => 1)];
  return Float64Array.from(sizes.flatMap((one) => sizes.map((other) => Math.max(LIGHTEST, one * other))));
}
