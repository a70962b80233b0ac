// About how deep one shape lies in another, looked up: grids over all shifts at which their boxes meet, each cell filled
// with the depth at its middle when first asked for. A look costs little; what it says is off by half a cell's diagonal at
// most. Two shapes turned together, or the one seen from the other, share a grid: it is read turned.

import type { Relations } from './alike';
import type { Shape } from './shape';
import { type Sums, signedDepthIn } from './sums';

/** Cells along a usual shape, and how many there may be in all: more do not stay in the processor's cache. */
const CELLS = 12;
const MOST_CELLS = 2_000_000;
/** Depths are counted in this share of the deepest. */
const LEVELS = 65_000;
const COARSER = 1.2;
/** How many numbers a grid takes. */
const GRID = 3;
/** Shares of a cell that rounding may cost. */
const ROUNDING = 1e-6;

/** What a cell says: not filled yet; nowhere an overlap; none in its middle. Above it lie depths. */
const UNKNOWN = 0;
export const CLEAR = 1;
export const NEARLY = 2;

/** How many numbers a view takes: the cell of column 0, row 0; by how much a column and a row move it; columns, rows. */
export const VIEW = 5;

export type Charts = {
  /** How two shapes, the resting one first, read their grid: `VIEW` numbers each. */
  readonly views: Int32Array;
  readonly cells: Uint16Array;
  /** Cells for each unit of length, what a level stands for, and how far off a depth may be. */
  readonly per: number;
  readonly level: number;
  readonly off: number;
  readonly shapes: readonly Shape[];
  readonly sums: (resting: number, moving: number) => Sums;
};

export function chartsOf(shapes: readonly Shape[], relations: Relations, apart: number, sums: Charts['sums']): Charts {
  const size = Math.sqrt(shapes.reduce((sum, { width, height }) => sum + width * height, 0) / shapes.length);
  const grids = new Int32Array(relations.count * GRID);
  let cell = size / CELLS;
  let total = layOut(grids, shapes, relations, apart, cell);
  for (; total > MOST_CELLS; total = layOut(grids, shapes, relations, apart, cell)) cell *= COARSER;
  const views = new Int32Array(relations.of.length * VIEW);
  for (let pair = 0; pair < relations.of.length; pair += 1) {
    setView(views, pair * VIEW, grids, (relations.of[pair] as number) * GRID, relations.quarters[pair] as number);
  }
  // No deeper than half of both boxes, along or across.
  const most = [Math.max(...shapes.map(({ width }) => width)), Math.max(...shapes.map(({ height }) => height))];
  const deepest = Math.min(...most) + apart;
  const level = deepest / LEVELS;
  const off = cell * (Math.SQRT1_2 + ROUNDING) + level;
  return {
    views,
    cells: new Uint16Array(total),
    per: 1 / cell,
    level,
    off,
    shapes,
    sums,
  };
}

/** The cell that a shift of the middles lies in: `at` is where the view of the two begins. */
export function cellOf({ views, per }: Charts, at: number, dx: number, dy: number): number {
  const column = (dx * per + 0.5 * (views[at + 3] as number)) | 0;
  const row = (dy * per + 0.5 * (views[at + 4] as number)) | 0;
  return (views[at] as number) + column * (views[at + 1] as number) + row * (views[at + 2] as number);
}

/** What that cell says. */
export function lookUp(charts: Charts, at: number, dx: number, dy: number): number {
  const { views, cells, per } = charts;
  const column = (dx * per + 0.5 * (views[at + 3] as number)) | 0;
  const row = (dy * per + 0.5 * (views[at + 4] as number)) | 0;
  const cell = (views[at] as number) + column * (views[at + 1] as number) + row * (views[at + 2] as number);
  const found = cells[cell] as number;
  return found === UNKNOWN ? filled(charts, at, column, row, cell) : found;
}

function filled(charts: Charts, at: number, column: number, row: number, cell: number): number {
  const { views, cells, per, level, off, shapes } = charts;
  const pair = at / VIEW;
  const x = (column + 0.5 - 0.5 * (views[at + 3] as number)) / per;
  const y = (row + 0.5 - 0.5 * (views[at + 4] as number)) / per;
  const depth = signedDepthIn(charts.sums(Math.floor(pair / shapes.length), pair % shapes.length), x, y);
  const found = depth > 0 ? NEARLY + Math.round(depth / level) : depth < -off ? CLEAR : NEARLY;
  cells[cell] = found;
  return found;
}

/** Where each grid begins, its columns and rows, for every relation; returns how many cells all have. */
function layOut(grids: Int32Array, shapes: readonly Shape[], { of, quarters }: Relations, apart: number, cell: number) {
  let total = 0;
  let next = 0;
  for (let pair = 0; pair < of.length; pair += 1) {
    if (of[pair] !== next) continue;
    const one = shapes[Math.floor(pair / shapes.length)] as Shape;
    const other = shapes[pair % shapes.length] as Shape;
    // One more than their boxes take: rounding never leads beyond the grid.
    const wide = Math.ceil((one.width + other.width + 2 * apart) / cell) + 1;
    const high = Math.ceil((one.height + other.height + 2 * apart) / cell) + 1;
    const isLevel = (quarters[pair] as number) % 2 === 0;
    grids[next * GRID] = total;
    grids[next * GRID + 1] = isLevel ? wide : high;
    grids[next * GRID + 2] = isLevel ? high : wide;
    total += wide * high;
    next += 1;
  }
  return total;
}

function setView(views: Int32Array, at: number, grids: Int32Array, grid: number, quarters: number): void {
  const from = grids[grid] as number;
  const columns = grids[grid + 1] as number;
  const rows = grids[grid + 2] as number;
  const last = rows * columns - 1;
  const [first, byColumn, byRow] = [
    [from, 1, columns],
    [from + last + 1 - columns, -columns, 1],
    [from + last, -1, -columns],
    [from + columns - 1, columns, -1],
  ][quarters] as [number, number, number];
  const across = quarters % 2 === 0 ? [columns, rows] : [rows, columns];
  views.set([first, byColumn, byRow, ...across], at);
}
