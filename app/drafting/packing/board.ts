// A board: a box whose rows remember what is taken. Boards are values: laying something gives a new one.
// Axes: x right, y down, from the top left corner, mm.

import type { Point } from '../geometry';
import { type Covers, closed, followed, insideSpans, ROW_MM, type Rows } from './rows';
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
  return blockBoxes(board, [box], gap);
}

export function blockBoxes(board: Board, boxes: readonly Box[], gap = 0): Board {
  const added = new Map<number, Span[]>();
  for (const { x, y, width, height } of boxes) {
    const [first, last] = rowRange(y - gap, y + height + gap);
    for (let row = Math.max(0, first); row <= Math.min(last, board.taken.length - 1); row += 1)
      put(added, row, [x - gap, x + width + gap]);
  }
  return withTaken(board, added);
}

/** The board with `gap` mm on both sides of a line taken. */
export function blockLine(board: Board, line: readonly Point[], gap: number): Board {
  return blockLines(board, [line], gap);
}

/** The board with `gap` mm on both sides of each line taken. */
export function blockLines(board: Board, lines: readonly (readonly Point[])[], gap: number): Board {
  return thickened(board, gap, (covers, rows) => {
    for (const line of lines) followed(line, rows, covers);
  });
}

/** The board with a polygon's inside and `gap` mm round it taken. */
export function block(board: Board, polygon: readonly Point[], gap: number): Board {
  const count = board.taken.length;
  return thickened(board, gap, (covers, rows) => {
    followed(closed(polygon), rows, covers);
    for (const [row, spans] of insideSpans(polygon, count).entries()) {
      for (const [from, to] of spans) covers(row, from, to);
    }
  });
}

/** The board with all but the polygon's inside taken, and `gap` mm within its edge too. */
export function blockOutside(board: Board, polygon: readonly Point[], gap: number): Board {
  const inside = insideSpans(polygon, board.taken.length);
  const outside = new Map(inside.map((spans, row) => [row, [...gaps(spans, -Infinity, Infinity)]]));
  return blockLine(withTaken(board, outside), closed(polygon), gap);
}

/** The board with all that is drawn on it taken, and `gap` mm round it: what lies above or below it by less reaches in. */
function thickened(board: Board, gap: number, draw: (covers: Covers, rows: readonly [number, number]) => void): Board {
  const reach = Math.ceil(gap / ROW_MM);
  const lowest = board.taken.length - 1;
  const added = new Map<number, Span[]>();
  const covers: Covers = (row, from, to) => {
    const last = Math.min(lowest, row + reach);
    for (let near = Math.max(0, row - reach); near <= last; near += 1) put(added, near, [from - gap, to + gap]);
  };
  draw(covers, [-reach, lowest + reach]);
  return withTaken(board, added);
}

function put(added: Map<number, Span[]>, row: number, span: Span): void {
  const spans = added.get(row);
  if (spans) spans.push(span);
  else added.set(row, [span]);
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
