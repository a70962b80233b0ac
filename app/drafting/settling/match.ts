import type { MeasureId } from '../../body';
import type { Adjustment } from '../draft-types';
import { type Drawing, draw, type From } from '../drawing/draw';
import { brent } from '../geometry';
import { active, type Garment } from '../rows/garment';
import type { AnyNames, Turn as Knob, MatchRow as Row } from '../rows/rows';
import { GATHERS_UP_TO_MM } from '../sizes/cloths';
import { known, type Sizes } from '../sizes/maker';

type MatchRow = Row<AnyNames>;
type Turn = Knob<AnyNames>;

/** How near a solved ratio comes to its aim: on a 300 mm seam, 0.003 mm. */
const RATIO_SOLVED = 1e-5;
/** A cap gathers in up to this ratio (common practice, no source). */
const MOST_GATHERED = 1.15;
/** Rows lean on each other's knobs; they settle within a few rounds or not at all. */
const MOST_ROUNDS = 6;

export type Matched = {
  readonly drawing: Drawing;
  readonly adjustments: readonly Adjustment[];
  readonly failed: MatchRow | null;
};

/**
 * Turns the garment's knobs, row by row and in their order, until every ratio lies within its aim; records each turn
 * the maker should know of. `failed` is the first row that no knob could bring home.
 */
export function match(garment: Garment, from: From, start: Sizes): Matched {
  const rows = active(garment.match, from.wearer.choices);
  let drawing = draw(garment, from, start);
  const turned = new Map<Turn, string>();
  let open: MatchRow[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = drawing;
    for (const row of rows) drawing = turnRow(garment, from, row, drawing, known(start), turned);
    open = rows.filter((row) => missedBy(row, drawing) !== 0);
    if (open.length === 0 || drawing === before) break;
  }
  const failed = open.find((row) => !settlesFor(row, drawing)) ?? null;
  const accepted = open.filter((row) => row !== failed && row.rest !== 'leave').map((row) => left(row, drawing));
  return { drawing, adjustments: [...told(turned, known(start), drawing.sizes), ...accepted], failed };
}

/** How far a ratio lies outside its aim: positive too long, negative too short, 0 within. */
function missedBy(row: MatchRow, drawing: Drawing): number {
  const [low, high] = row.aim(drawing.wearer);
  const ratio = row.ratio(drawing);
  if (ratio > high + RATIO_SOLVED) return ratio - high;
  return ratio < low - RATIO_SOLVED ? ratio - low : 0;
}

function turnRow(
  garment: Garment,
  from: From,
  row: MatchRow,
  before: Drawing,
  start: Sizes,
  turned: Map<Turn, string>,
): Drawing {
  let drawing = before;
  for (const turn of row.turn) {
    const missed = missedBy(row, drawing);
    if (missed === 0) break;
    const now = sizeIn(drawing.sizes, turn);
    const limit = turn.limit(drawing, start);
    if (Math.abs(limit - now) < 1e-9) continue;
    const at = (value: number) => draw(garment, from, { ...drawing.made, [turn.size]: value }, drawing);
    const [low, high] = row.aim(from.wearer);
    const target = missed > 0 ? high : low;
    const farthest = at(limit);
    const atLimit = row.ratio(farthest) - target;
    if (!(Math.abs(atLimit) < Math.abs(missed)) && Math.sign(atLimit) === Math.sign(missed)) continue;
    if (Math.sign(atLimit) === Math.sign(missed)) drawing = farthest;
    else {
      const solved = brent((value) => row.ratio(at(value)) - target, now, limit, { tolerance: RATIO_SOLVED / 2 });
      if (!solved.ok) continue;
      drawing = at(solved.x);
    }
    turned.set(turn, row.what);
  }
  return drawing;
}

function settlesFor(row: MatchRow, drawing: Drawing): boolean {
  if (row.rest !== 'gather') return row.rest !== 'refuse';
  const most = row.gathersTo ?? (drawing.wearer.cloth.thickness <= GATHERS_UP_TO_MM ? MOST_GATHERED : 1);
  const ratio = row.ratio(drawing);
  return ratio > 1 && ratio <= most;
}

function left(row: MatchRow, drawing: Drawing): Adjustment {
  return {
    code: `${row.what}-${row.rest === 'gather' ? 'gathered' : 'differs'}`,
    by: missedBy(row, drawing),
    because: row.what,
    check: row.check,
  };
}

/** A knob's size; `known` throws where there is none. */
function sizeIn(sizes: Sizes, { size }: Turn): number {
  return sizes[size] as number;
}

/** One adjustment a size, however many turns it took, under the code of the last; changes under 0.5 mm are no news. */
function told(turned: ReadonlyMap<Turn, string>, start: Sizes, sizes: Sizes): Adjustment[] {
  const news = new Map<string, Adjustment>();
  for (const [turn, because] of turned) {
    const by = sizeIn(sizes, turn) - sizeIn(start, turn);
    const check: readonly MeasureId[] = turn.check ?? [];
    if (turn.code && Math.abs(by) > 0.5) news.set(turn.size, { code: turn.code, by, because, check });
  }
  return [...news.values()];
}
