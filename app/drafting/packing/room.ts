// Free rectangles: where a label goes.

import type { Board } from './board';
import { ROW_MM } from './rows';
import type { Spans } from './spans';

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
    for (let row = start - step; row <= start + step; row += Math.max(1, 2 * step)) {
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
function tooNarrow(board: Board, width: number): Int32Array {
  const widest = widestGaps(board);
  const counts = new Int32Array(widest.length + 1);
  for (let row = 0; row < widest.length; row += 1) {
    counts[row + 1] = (counts[row] ?? 0) + ((widest[row] ?? 0) < width ? 1 : 0);
  }
  return counts;
}

/** The widest gap of each row, mm; boards are values, so it is found once for all sizes that are tried on one. */
function widestGaps(board: Board): Float64Array {
  const known = gapsKnown.get(board);
  if (known) return known;
  const widest = Float64Array.from(board.taken, (taken) => {
    let most = 0;
    let at = 0;
    for (const [from, to] of taken) {
      most = Math.max(most, Math.min(from, board.width) - at);
      at = Math.max(at, to);
    }
    return Math.max(most, board.width - at);
  });
  gapsKnown.set(board, widest);
  return widest;
}
const gapsKnown = new WeakMap<Board, Float64Array>();

/** The place nearest to the wished one that is free in all of some rows: the nearer of the first free ones on either side. */
function nearestX(board: Board, first: number, end: number, width: number, wished: number): number | undefined {
  const last = board.width - width;
  if (last < 0) return undefined;
  const from = Math.min(Math.max(wished, 0), last);
  const right = freeFrom(board, first, end, width, from, 1);
  const left = freeFrom(board, first, end, width, from, -1);
  const rightward = right <= last + TOUCHING_MM ? Math.min(right, last) : undefined;
  const leftward = left >= 0 ? left : undefined;
  if (rightward === undefined || leftward === undefined) return rightward ?? leftward;
  return rightward - wished < wished - leftward ? rightward : leftward;
}

/** Moves x one way past whatever is taken in any of the rows, until nothing is. */
function freeFrom(board: Board, first: number, end: number, width: number, x: number, way: 1 | -1): number {
  let at = x;
  let clear = 0;
  for (let row = first; clear < end - first; row = row + 1 < end ? row + 1 : first) {
    const next = pastTaken(board.taken[row] ?? [], width, at, way);
    clear = next === at ? clear + 1 : 1;
    at = next;
    if (at < 0 || at + width > board.width + TOUCHING_MM) return at;
  }
  return at;
}

function pastTaken(taken: Spans, width: number, x: number, way: 1 | -1): number {
  let at = x;
  for (let i = way > 0 ? 0 : taken.length - 1; i >= 0 && i < taken.length; i += way) {
    const span = taken[i];
    const from = span ? span[0] : 0;
    const to = span ? span[1] : 0;
    if (at > from - width + TOUCHING_MM && at < to - TOUCHING_MM) {
      at = way > 0 ? to - TOUCHING_MM : from - width + TOUCHING_MM;
    }
  }
  return at;
}
