// About how deep one shape lies in another, looked up: a grid over all shifts at which their boxes meet, each cell filled
// with the depth at its middle when first asked for. A look costs little; what it says is off by a cell at most.

import type { Shape } from './shape';
import { type Sums, signedDepthIn } from './sums';

/** Cells along and across. */
const CELLS = 32;

/** The left top corner of the grid, cells for each unit of length, and the depths, NaN where not known yet. */
export type Chart = {
  readonly sums: Sums;
  readonly left: number;
  readonly top: number;
  readonly perX: number;
  readonly perY: number;
  readonly cells: Float32Array;
};

export function chartOf(resting: Shape, moving: Shape, sums: Sums, apart: number): Chart {
  const [left, top] = [-moving.width - apart, -moving.height - apart];
  const [perX, perY] = [CELLS / (resting.width + apart - left), CELLS / (resting.height + apart - top)];
  return { sums, left, top, perX, perY, cells: new Float32Array(CELLS * CELLS).fill(Number.NaN) };
}

/** About how deep a shift lies, negative outside. */
export function depthAbout(chart: Chart, x: number, y: number): number {
  const column = Math.min(CELLS - 1, ((x - chart.left) * chart.perX) | 0);
  const row = Math.min(CELLS - 1, ((y - chart.top) * chart.perY) | 0);
  const known = chart.cells[row * CELLS + column] as number;
  return Number.isNaN(known) ? filled(chart, column, row) : known;
}

function filled({ sums, left, top, perX, perY, cells }: Chart, column: number, row: number): number {
  const depth = signedDepthIn(sums, left + (column + 0.5) / perX, top + (row + 0.5) / perY);
  cells[row * CELLS + column] = depth;
  return depth;
}
