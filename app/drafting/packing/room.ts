// Free rectangles: where a label goes.

import type { Board } from './board';
import { ROW_MM } from './rows';
import { gaps, merged } from './spans';

/** A box may touch what is taken: so much overlap, mm, is none. */
const TOUCHING_MM = 1e-6;

/**
 * The top left corner of the free width × height box whose middle lies nearest to x, y; undefined where none is free.
 * Tries rows outward from the wished one, so that the first good places end the search.
 */
export function nearestRoom(
  board: Board,
  width: number,
  height: number,
  wish: { readonly x: number; readonly y: number },
): { readonly x: number; readonly y: number } | undefined {
  const wishedX = wish.x - width / 2;
  const wishedY = wish.y - height / 2;
  const lowest = board.height - height;
  const start = Math.round(wishedY / ROW_MM);
  const rows = Math.ceil(board.height / ROW_MM);
  const narrow = tooNarrow(board, width);
  let best: { x: number; y: number } | undefined;
  let near = Infinity;
  for (let step = 0; step <= rows * 2 && away(step, start, wishedY) < near; step += 1) {
    for (const row of step === 0 ? [start] : [start - step, start + step]) {
      const y = row * ROW_MM;
      if (y < 0 || y > lowest) continue;
      const end = Math.ceil((y + height) / ROW_MM);
      if (narrow[end] !== narrow[row]) continue;
      const x = nearestX(board, row, end, width, wishedX);
      const distance = x === undefined ? Infinity : Math.hypot(x - wishedX, y - wishedY);
      if (x !== undefined && distance < near) {
        near = distance;
        best = { x, y };
      }
    }
  }
  return best;
}

/** How far off, at least, the rows of this step are. */
function away(step: number, start: number, wishedY: number): number {
  return Math.max(0, step * ROW_MM - Math.abs(start * ROW_MM - wishedY));
}

/** For each row, how many rows above it have no gap of that width: a box over any of them has no room. */
function tooNarrow(board: Board, width: number): readonly number[] {
  const counts = [0];
  let count = 0;
  for (const taken of board.taken) {
    if (!gaps(taken, 0, board.width).some(([from, to]) => to - from >= width)) count += 1;
    counts.push(count);
  }
  return counts;
}

function nearestX(board: Board, first: number, end: number, width: number, wished: number): number | undefined {
  const last = board.width - width;
  const rows = board.taken.slice(first, end);
  const taken = merged(rows.flat().map(([a, b]) => [a - width + TOUCHING_MM, b - TOUCHING_MM] as const));
  let best: number | undefined;
  for (const [from, to] of last >= 0 ? gaps(taken, 0, last + TOUCHING_MM) : []) {
    const x = Math.min(Math.max(wished, from), to, last);
    if (best === undefined || Math.abs(x - wished) < Math.abs(best - wished)) best = x;
  }
  return best;
}
