// A piece larger than the paper: the windows it is seen through, page by page, and the marks that join them.

import type { Mm } from '../../body';
import type { Point } from '../geometry';
import type { Box } from '../packing';
import { type Figure, moveTo, type Turned, turnFigure } from './figure';
import type { Move, Tile } from './layout';

/** Neighbouring pages show the same strip, this wide, mm. */
export const OVERLAP_MM = 10;

/** Turns tried beside quarters, so that a slanting piece may save a page: every 5°. */
const TURN_STEP = Math.PI / 36;

/** Where a piece may lie on a grid larger than itself, as shares of what is to spare. */
const SHIFTS = [0, 0.25, 0.5, 0.75, 1];

/** One page of a tiled piece: its tile, and where the whole piece lies on it. */
export type TilePage = { readonly turned: Turned; readonly move: Move; readonly tile: Tile };

type Cell = { readonly row: number; readonly column: number };

/** `left` and `top`: how far the piece lies from the first window's corner. */
type Grid = { readonly turned: Turned; readonly left: Mm; readonly top: Mm; readonly cells: readonly Cell[] };

/** The fewest pages that show the whole figure through a window of that size; rows are lettered from `firstRow` on. */
export function tile(figure: Figure, window: Box, firstRow: number): readonly TilePage[] {
  const { turned, left, top, cells } = fewest(figure, window);
  const stepX = window.width - OVERLAP_MM;
  const stepY = window.height - OVERLAP_MM;
  const nameAt = (row: number, column: number): string | undefined =>
    cells.some((cell) => cell.row === row && cell.column === column) ? tileName(firstRow + row, column) : undefined;
  return cells.map(({ row, column }) => {
    const joins = named({
      left: nameAt(row, column - 1),
      right: nameAt(row, column + 1),
      up: nameAt(row - 1, column),
      down: nameAt(row + 1, column),
    });
    return {
      turned,
      move: moveTo(turned, window.x + left - column * stepX, window.y + top - row * stepY),
      tile: {
        piece: figure.piece,
        row: firstRow + row,
        column,
        window,
        joins,
        crosses: corners(window)
          .filter(({ dx, dy }) =>
            [nameAt(row + dy, column), nameAt(row, column + dx), nameAt(row + dy, column + dx)].some(Boolean),
          )
          .map(({ x, y }) => ({ x, y })),
      },
    };
  });
}

/** Rows are letters, columns numbers: A1, B3, AA2. */
export function tileName(row: number, column: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return `${row >= 26 ? tileName(Math.floor(row / 26) - 1, -1) : ''}${letter}${column < 0 ? '' : column + 1}`;
}

/** The middle of the overlap at each corner: the same spot on every page that meets there. */
function corners({ x, y, width, height }: Box): readonly (Point & { readonly dx: number; readonly dy: number })[] {
  const inset = OVERLAP_MM / 2;
  return [-1, 1].flatMap((dy) =>
    [-1, 1].map((dx) => ({
      x: dx < 0 ? x + inset : x + width - inset,
      y: dy < 0 ? y + inset : y + height - inset,
      dx,
      dy,
    })),
  );
}

function fewest(figure: Figure, window: Box): Grid {
  const quarters = [0, Math.PI / 2];
  const slants = Array.from({ length: Math.round(Math.PI / TURN_STEP) }, (_, i) => i * TURN_STEP);
  const grids = [...quarters, ...slants].flatMap((turn) =>
    gridsOf(turnFigure({ ...figure, labelBeside: undefined }, turn), window),
  );
  return grids.reduce((best, grid) => (grid.cells.length < best.cells.length ? grid : best));
}

/** A turned figure in as many places on the least grid that holds it as may make a difference. */
function gridsOf(turned: Turned, window: Box): readonly Grid[] {
  const { width, height } = turned.rows;
  const columns = count(width, window.width);
  const rows = count(height, window.height);
  const spareX = columns * (window.width - OVERLAP_MM) + OVERLAP_MM - width;
  const spareY = rows * (window.height - OVERLAP_MM) + OVERLAP_MM - height;
  return SHIFTS.flatMap((y) =>
    SHIFTS.map((x): Grid => {
      const [left, top] = [spareX * x, spareY * y];
      return { turned, left, top, cells: cellsOf(turned, window, left, top, columns, rows) };
    }),
  );
}

/** The pages a figure needs, row by row: those whose share of the plane, to the middle of each overlap, it enters. */
function cellsOf({ rows }: Turned, window: Box, left: Mm, top: Mm, columns: number, lines: number): readonly Cell[] {
  const entered = new Set<number>();
  rows.rows.forEach((spans, index) => {
    const row = share(index + 0.5 + top, window.height, lines);
    for (const [from, to] of spans) {
      const last = share(to + left, window.width, columns);
      for (let column = share(from + left, window.width, columns); column <= last; column += 1) {
        entered.add(row * columns + column);
      }
    }
  });
  return [...entered].sort((a, b) => a - b).map((key) => ({ row: Math.floor(key / columns), column: key % columns }));
}

/** How many windows cover a length. */
function count(length: Mm, window: Mm): number {
  return Math.max(1, Math.ceil((length - OVERLAP_MM) / (window - OVERLAP_MM)));
}

/** Which window a place belongs to. */
function share(at: Mm, window: Mm, windows: number): number {
  return Math.min(Math.max(0, Math.floor((at - OVERLAP_MM / 2) / (window - OVERLAP_MM))), windows - 1);
}

function named(joins: { readonly [Side in keyof Tile['joins']]: string | undefined }): Tile['joins'] {
  return Object.fromEntries(Object.entries(joins).filter(([, name]) => name !== undefined));
}
