import { type Chart, chartOf } from './chart';
import type { Shape } from './shape';
import { mirrored, type Sums, sumsOf } from './sums';

/** Shapes, and the sums and the chart of every two of them, worked out when first asked for: row by row, the resting one first. */
export type Stock = {
  readonly shapes: readonly Shape[];
  readonly apart: number;
  readonly sums: (resting: number, moving: number) => Sums;
  readonly charts: (Chart | undefined)[];
  readonly chart: (resting: number, moving: number) => Chart;
};

/** `apart`: what any two shapes keep between them; a hair at least, so that rounding never makes them overlap. */
export function stockOf(shapes: readonly Shape[], apart: number): Stock {
  const none = (): undefined[] => Array.from({ length: shapes.length ** 2 }, () => undefined);
  const known: (Sums | undefined)[] = none();
  const charts: (Chart | undefined)[] = none();
  const sums = (resting: number, moving: number): Sums => {
    const at = resting * shapes.length + moving;
    const back = known[moving * shapes.length + resting];
    const found =
      known[at] ?? (back ? mirrored(back) : sumsOf(shapes[resting] as Shape, shapes[moving] as Shape, apart));
    known[at] = found;
    return found;
  };
  const chart = (resting: number, moving: number): Chart => {
    const at = resting * shapes.length + moving;
    const [one, other] = [shapes[resting] as Shape, shapes[moving] as Shape];
    const found = charts[at] ?? chartOf(one, other, sums(resting, moving), apart);
    charts[at] = found;
    return found;
  };
  return { shapes, apart, sums, charts, chart };
}
