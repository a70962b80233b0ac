import { MM_PER_INCH, type Mm } from '../../body';

/** Lengths in a code are whole numbers of steps; a step is `unit / parts` mm. */
export type Grid = { readonly unit: Mm; readonly parts: number; readonly step: Mm };

const grid = (unit: Mm, parts: number): Grid => ({ unit, parts, step: unit / parts });

/** Where nothing else fits: no length is off by more than a quarter of a millimetre. */
const HALF_MM = grid(1, 2);

/** Three bits of the code choose one. Append only, up to eight. */
export const grids: readonly Grid[] = [HALF_MM, grid(MM_PER_INCH, 64), grid(1, 1), grid(MM_PER_INCH, 16), grid(1, 10)];

/**
 * The coarsest grid on which all lengths lie exactly: what makers read off a tape comes through unchanged. Where none
 * fits (readings in both units, or worked out), half a millimetre, so that nothing is off by more than a quarter.
 */
export function coarsestExactGrid(lengths: readonly Mm[]): Grid {
  const coarsestFirst = [...grids].sort((a, b) => b.step - a.step);
  return coarsestFirst.find(({ step }) => lengths.every((length) => liesOn(step, length))) ?? HALF_MM;
}

const liesOn = (step: Mm, length: Mm) => Math.abs(length - Math.round(length / step) * step) < SAME_MM;

/** Below what any arithmetic on typed lengths leaves behind, far below any step. */
const SAME_MM = 1e-6;
