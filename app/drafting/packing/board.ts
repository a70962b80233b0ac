// A board: a box whose rows remember what is taken. Boards are values: laying something gives a new one.
// Axes: x right, y down, from the top left corner, mm.

import type { Point } from '../geometry';
import { type Covers, closed, followed, insideSpans, ROW_MM, type Rows } from './rows';
import { gaps, type Loose, type Spans, withLoose } from './spans';

export type Board = { readonly width: number; readonly height: number; readonly taken: readonly Spans[] };
/** What is found of some rows, by their number. */
type LooseRows = (Loose | undefined)[];
/** Something that covers stretches of rows: `covers` is told each, for the rows from one to another. */
type Drawing = (covers: Covers, rows: readonly [number, number]) => void;
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

export function emptyBoard(width: number, height: number): Board {
  return { width, height, taken: Array.from({ length: Math.ceil(height / ROW_MM) }, () => []) };
}

/** The board with the rows laid at x, y (their top left corner) and `gap` mm all round them taken. */
export function blockRows(board: Board, rows: Rows, x: number, y: number, gap = 0): Board {
  const added: LooseRows = [];
  rows.rows.forEach((spans, index) => {
    const [first, last] = rowRange(y + index * ROW_MM - gap, y + (index + 1) * ROW_MM + gap);
    for (let row = Math.max(0, first); row <= last; row += 1) {
      for (const [from, to] of spans) looseOf(added, row).push(from + x - gap, to + x + gap);
    }
  });
  return withTaken(board, added);
}

export function blockBox(board: Board, box: Box, gap = 0): Board {
  return blockBoxes(board, [box], gap);
}

export function blockBoxes(board: Board, boxes: readonly Box[], gap = 0): Board {
  const added: LooseRows = [];
  for (const { x, y, width, height } of boxes) {
    const [first, last] = rowRange(y - gap, y + height + gap);
    for (let row = Math.max(0, first); row <= Math.min(last, board.taken.length - 1); row += 1)
      looseOf(added, row).push(x - gap, x + width + gap);
  }
  return withTaken(board, added);
}

/** The board with `gap` mm on both sides of a line taken. */
export function blockLine(board: Board, line: readonly Point[], gap: number): Board {
  return blockLines(board, [line], gap);
}

/** The board with `gap` mm on both sides of each line taken. */
export function blockLines(board: Board, lines: readonly (readonly Point[])[], gap: number): Board {
  const added: LooseRows = [];
  thicken(added, board, gap, drawingOf(lines));
  return withTaken(board, added);
}

/** The board with a polygon's inside and `gap` mm round it taken. */
export function block(board: Board, polygon: readonly Point[], gap: number): Board {
  const added: LooseRows = [];
  thicken(added, board, gap, (covers, rows) => {
    followed(closed(polygon), rows, covers);
    for (const [row, spans] of insideSpans(polygon, board.taken.length).entries()) {
      for (const [from, to] of spans) covers(row, from, to);
    }
  });
  return withTaken(board, added);
}

/** The board with all but the polygon's inside taken, and `gap` mm within its edge too. */
export function blockOutside(board: Board, polygon: readonly Point[], gap: number): Board {
  const inside = insideSpans(polygon, board.taken.length);
  const added: LooseRows = [];
  thicken(added, board, gap, drawingOf([closed(polygon)]));
  const taken = inside.map((spans, row) => {
    if (spans.length === 0) return EVERYWHERE;
    const loose = added[row] ?? [];
    for (const [from, to] of gaps(spans, -Infinity, Infinity)) loose.push(from, to);
    return withLoose(board.taken[row] ?? [], loose);
  });
  return { ...board, taken };
}
const EVERYWHERE: Spans = [[-Infinity, Infinity]];

const drawingOf =
  (lines: readonly (readonly Point[])[]): Drawing =>
  (covers, rows) => {
    for (const line of lines) followed(line, rows, covers);
  };

/**
 * Adds all that is drawn on a board, and `gap` mm round it: what lies above or below it by less reaches in. What a line
 * covers in a row is put together before it is made thick: lines are of many chords.
 */
function thicken(added: LooseRows, board: Board, gap: number, draw: Drawing): void {
  const reach = Math.ceil(gap / ROW_MM);
  const lowest = board.taken.length - 1;
  const thin: LooseRows = [];
  draw(
    (row, from, to) => {
      const loose = looseOf(thin, row + reach);
      const end = loose.length - 1;
      const before = loose[end - 1] ?? 0;
      const last = loose[end] ?? -Infinity;
      if (from > last || to < before) loose.push(from, to);
      else {
        if (from < before) loose[end - 1] = from;
        if (to > last) loose[end] = to;
      }
    },
    [-reach, lowest + reach],
  );
  for (const [at, loose] of thin.entries()) {
    if (!loose) continue;
    for (let row = Math.max(0, at - 2 * reach); row <= Math.min(lowest, at); row += 1) {
      const near = looseOf(added, row);
      for (let i = 0; i < loose.length; i += 2) near.push((loose[i] ?? 0) - gap, (loose[i + 1] ?? 0) + gap);
    }
  }
}

function looseOf(rows: LooseRows, row: number): Loose {
  const known = rows[row];
  if (known) return known;
  const loose: Loose = [];
  rows[row] = loose;
  return loose;
}

function withTaken(board: Board, added: readonly (Loose | undefined)[]): Board {
  const taken = board.taken.map((before, row) => {
    const loose = added[row];
    return loose ? withLoose(before, loose) : before;
  });
  return { ...board, taken };
}

/** First and last row a stretch of y touches. */
function rowRange(from: number, to: number): readonly [number, number] {
  return [Math.floor(from / ROW_MM), Math.ceil(to / ROW_MM) - 1];
}
