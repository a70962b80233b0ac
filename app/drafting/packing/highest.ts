// Bottom-left fill, top down: the highest free place of a board, and there the leftmost.

import type { Board } from './board';
import { ROW_MM, type Rows } from './rows';
import { merged, type Spans, shifted } from './spans';

/** Places are whole hundredths of a millimetre along x and whole rows along y. */
const STEPS_PER_MM = 100;

/** What turning an outline may add to its size, mm: a piece exactly as large as a board fits it in every quarter turn. */
export const ROUNDING_MM = 1e-6;

/** Where the rows' top left corner goes. */
export type Place = { readonly x: number; readonly y: number };

/** An outline with what it keeps free all round, to be laid again and again. */
export type Stamp = { readonly rows: Rows; readonly grown: readonly Spans[]; readonly reach: number };

/** Rows that keep `gap` mm to whatever else lies on a board; the board's own edge they may touch. */
export function stampOf(rows: Rows, gap: number): Stamp {
  const reach = Math.ceil(gap / ROW_MM);
  const grown = Array.from({ length: rows.rows.length + 2 * reach }, (_, i) =>
    merged(shifted(rows.rows.slice(Math.max(0, i - 2 * reach), i + 1).flat(), 0, gap)),
  );
  return { rows, grown, reach };
}

/** The highest place whose top lies above `limit` mm, and there the leftmost; undefined where there is no room. */
export function highestPlace(board: Board, { rows, grown, reach }: Stamp, limit = Infinity): Place | undefined {
  const last = board.width - rows.width + ROUNDING_MM;
  const lowest = board.height - rows.height + ROUNDING_MM;
  let hot = 0;
  for (let y = 0; y * ROW_MM <= lowest && y * ROW_MM < limit; y += 1) {
    let step = 0;
    while (step / STEPS_PER_MM <= last) {
      const x = step / STEPS_PER_MM;
      const found = inTheWay(board, grown, y - reach, x, hot);
      if (!found) return { x, y: y * ROW_MM };
      hot = found.row;
      step = Math.max(Math.ceil(found.clear * STEPS_PER_MM), step + 1);
    }
    // The row of the board that stood in the way lies one higher up in the outline next time.
    hot = Math.max(0, hot - 1);
  }
  return undefined;
}

type InTheWay = { readonly row: number; readonly clear: number };

/**
 * The first thing in the way at x, and the x that clears it. Looks first at the row that was in the way before, since
 * it mostly is again; stepping to `clear` misses no place, since no x before it is free.
 */
function inTheWay(board: Board, rows: readonly Spans[], top: number, x: number, hot: number): InTheWay | undefined {
  const again = clearOf(board, rows, top, x, hot);
  if (again !== undefined) return { row: hot, clear: again };
  for (let row = 0; row < rows.length; row += 1) {
    const clear = clearOf(board, rows, top, x, row);
    if (clear !== undefined) return { row, clear };
  }
  return undefined;
}

function clearOf(board: Board, rows: readonly Spans[], top: number, x: number, row: number): number | undefined {
  const taken = board.taken[top + row];
  const spans = rows[row];
  if (!taken || !spans || taken.length === 0) return undefined;
  for (const [from, to] of spans) {
    for (const [a, b] of taken) {
      if (a >= x + to) break;
      if (b > x + from) return b - from;
    }
  }
  return undefined;
}
