// A board: a box whose rows remember what is taken. Boards are values: laying something gives a new one.
// Axes: x right, y down, from the top left corner, mm.

import type { Point } from '../geometry';
import { closed, edgeSpans, insideSpans, ROW_MM, type Rows } from './rows';
import { gaps, merged, type Span, type Spans, shifted } from './spans';

export type Board = { readonly width: number; readonly height: number; readonly taken: readonly Spans[] };
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

export function emptyBoard(width: number, height: number): Board {
  return { width, height, taken: Array.from({ length: Math.ceil(height / ROW_MM) }, () => []) };
}

/** The board with the rows laid at x, y (their top left corner) and `gap` mm all round them taken. */
export function blockRows(board: Board, rows: Rows, x: number, y: number, gap = 0): Board {
  const added = new Map<number, Span[]>();
  rows.rows.forEach((spans, index) => {
    const [first, last] = rowRange(y + index * ROW_MM - gap, y + (index + 1) * ROW_MM + gap);
    const moved = shifted(spans, x, gap);
    for (let row = first; row <= last; row += 1) added.set(row, [...(added.get(row) ?? []), ...moved]);
  });
  return withTaken(board, added);
}

export function blockBox(board: Board, box: Box, gap = 0): Board {
  const [first, last] = rowRange(box.y - gap, box.y + box.height + gap);
  const span: Span = [box.x - gap, box.x + box.width + gap];
  return withTaken(board, new Map(range(first, last).map((row) => [row, [span]])));
}

/** The board with `gap` mm on both sides of a line taken. */
export function blockLine(board: Board, line: readonly Point[], gap: number): Board {
  return blockLines(board, [line], gap);
}

/** The board with `gap` mm on both sides of each line taken. */
export function blockLines(board: Board, lines: readonly (readonly Point[])[], gap: number): Board {
  return thickened(board, edgeSpans(lines, board.taken.length), gap);
}

/** The board with a polygon's inside and `gap` mm round it taken. */
export function block(board: Board, polygon: readonly Point[], gap: number): Board {
  const count = board.taken.length;
  const edge = edgeSpans([closed(polygon)], count);
  const inside = insideSpans(polygon, count);
  return thickened(
    board,
    edge.map((spans, row) => merged([...spans, ...(inside[row] ?? [])])),
    gap,
  );
}

/** The board with all but the polygon's inside taken, and `gap` mm within its edge too. */
export function blockOutside(board: Board, polygon: readonly Point[], gap: number): Board {
  const inside = insideSpans(polygon, board.taken.length);
  const outside = new Map(inside.map((spans, row) => [row, [...gaps(spans, -Infinity, Infinity)]]));
  return blockLine(withTaken(board, outside), closed(polygon), gap);
}

function thickened(board: Board, lines: readonly Spans[], gap: number): Board {
  const reach = Math.ceil(gap / ROW_MM);
  const added = board.taken.map((): Span[] => []);
  lines.forEach((spans, index) => {
    const wide = shifted(spans, 0, gap);
    for (let row = Math.max(0, index - reach); row <= index + reach; row += 1) added[row]?.push(...wide);
  });
  return withTaken(board, added.entries());
}

function withTaken(board: Board, added: Iterable<readonly [row: number, spans: readonly Span[]]>): Board {
  const taken = [...board.taken];
  for (const [row, spans] of added) {
    const before = taken[row];
    if (before && spans.length > 0) taken[row] = merged([...before, ...spans]);
  }
  return { ...board, taken };
}

/** First and last row a stretch of y touches. */
function rowRange(from: number, to: number): readonly [number, number] {
  return [Math.floor(from / ROW_MM), Math.ceil(to / ROW_MM) - 1];
}

function range(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}
