import type { Shape } from './shape';
import { mirrored, type Sums, sumsOf } from './sums';

/** Shapes, and the sums of every two of them, worked out when first asked for: row by row, the resting one first. */
export type Stock = {
  readonly shapes: readonly Shape[];
  readonly apart: number;
  readonly known: (Sums | undefined)[];
  readonly sums: (resting: number, moving: number) => Sums;
};

/** `apart`: what any two shapes keep between them; a hair at least, so that rounding never makes them overlap. */
export function stockOf(shapes: readonly Shape[], apart: number): Stock {
  const known: (Sums | undefined)[] = Array.from({ length: shapes.length ** 2 }, () => undefined);
  const sums = (resting: number, moving: number): Sums => {
    const at = resting * shapes.length + moving;
    const back = known[moving * shapes.length + resting];
    const found =
      known[at] ?? (back ? mirrored(back) : sumsOf(shapes[resting] as Shape, shapes[moving] as Shape, apart));
    known[at] = found;
    return found;
  };
  return { shapes, apart, known, sums };
}
