// What is drawn inside a piece beside its label, as taken room: fold mark, grain arrow, lines, cuts, and their words.

import type { Mm } from '../../body';
import type { Edge, Piece } from '../draft-types';
import {
  add,
  end,
  flatten,
  left,
  mirrorPath,
  type Path,
  type Point,
  scale,
  start,
  subtract,
  transformPath,
  unit,
} from '../geometry';
import { type Board, blockLine, blockLines } from '../packing';
import { ticks } from '../pieces/ticks';
import { type Print, printRooms } from './prints';

/** Kept between words and whatever is near, mm. */
export const CLEAR_MM = 1.5;

/** How closely lines are followed when words look for room among them, mm. */
const FOLLOWED_MM = 0.2;
/** A line that bows less than this is read as a straight one, mm. */
const AS_GOOD_AS_STRAIGHT_MM = 1;

/** Shortest fold that is marked, mm, and the share of it that the mark takes. */
const SHORTEST_FOLD_MM = 18;

/** On the centre line, within the rounding of output, mm. */
const ON_AXIS_MM = 1e-4;

/** The board with a piece's inner marks taken; `to` puts its points in their place on the board. */
export function withMarks(
  board: Board,
  piece: Piece,
  whole: boolean,
  to: (p: Point) => Point,
  print: Print = 'usual',
): Board {
  const { foldMark, along } = printRooms[print];
  const folds = piece.edges.filter((edge) => edge.role === 'fold');
  const marked = !whole && folds.some((edge) => foldStretch(piece, edge, print));
  const fold: Mm = CLEAR_MM + (marked ? foldMark : 0);
  const inner = [
    ...piece.lines.map((line) => line.path),
    ...piece.cuts,
    ...piece.notches.flatMap((notch) => ticks(piece, notch)),
  ];
  const on = (path: Path) => flatten(transformPath(path, to), FOLLOWED_MM);
  const drawn = blockLines(board, (whole ? [...inner, ...inner.map(mirrorPath)] : inner).map(on), CLEAR_MM);
  const taken = blockLines(
    drawn,
    folds.map(({ path }) => on(path)),
    fold,
  );
  // In large print lines bear no words.
  const worded = [piece.grain, ...(print === 'usual' ? piece.lines.flatMap(({ path }) => straight(path)) : [])];
  return worded.reduce((board, ends) => {
    const words = scale(wordSide(ends, to), along / 2);
    return blockLine(
      board,
      ends.map((p) => add(to(p), words)),
      along / 2 + CLEAR_MM,
    );
  }, taken);
}

/**
 * The stretch of a fold edge that its mark points at: the longest free of slits on the fold. None where it is too
 * short, or the grain arrow too near: the label must do.
 */
export function foldStretch(piece: Piece, fold: Edge, print: Print = 'usual'): readonly [Point, Point] | undefined {
  if (Math.min(...piece.grain.map((p) => p.x)) < printRooms[print].foldMark + CLEAR_MM) return undefined;
  const [from, until] = [start(fold.path), end(fold.path)];
  const taken = piece.lines.map((line) => line.path).filter(onAxis);
  const stops = [from.y, until.y, ...taken.flatMap((path) => [start(path).y, end(path).y])].sort((a, b) => a - b);
  const free = stops
    .slice(1)
    .map((below, i) => [stops[i] ?? below, below] as const)
    .filter(([above, below]) => !taken.some((path) => covers(path, (above + below) / 2)));
  const [above, below] = free.reduce((most, each) => (each[1] - each[0] > most[1] - most[0] ? each : most), [0, 0]);
  if (below - above < SHORTEST_FOLD_MM) return undefined;
  const ends = [
    { x: from.x, y: above },
    { x: from.x, y: below },
  ] as const;
  return from.y < until.y ? ends : [ends[1], ends[0]];
}

/** The side words stand on, one long, as `to` turns it: away from where a fold would be; above what lies level. */
export function wordSide([from, until]: readonly [Point, Point], to: (p: Point) => Point): Point {
  const side = left(unit(subtract(until, from)));
  const level = Math.abs(side.x) <= ON_AXIS_MM;
  const outward = (level ? side.y > 0 : side.x < 0) ? scale(side, -1) : side;
  return subtract(to(outward), to({ x: 0, y: 0 }));
}

/** The ends of a path that is one line, straight or as good as that: only along such do words stand. */
export function straight(path: Path): readonly (readonly [Point, Point])[] {
  const [first] = path;
  if (!first || path.length > 1) return [];
  const { from, to } = first;
  const along = unit(subtract(to, from));
  const bow = flatten(path, FOLLOWED_MM).map((p) => Math.abs(along.x * (p.y - from.y) - along.y * (p.x - from.x)));
  return Math.max(0, ...bow) < AS_GOOD_AS_STRAIGHT_MM ? [[from, to]] : [];
}

function onAxis(path: Path): boolean {
  return path.every((curve) => Math.abs(curve.from.x) <= ON_AXIS_MM && Math.abs(curve.to.x) <= ON_AXIS_MM);
}

function covers(path: Path, y: Mm): boolean {
  const ys = [start(path).y, end(path).y];
  return y > Math.min(...ys) && y < Math.max(...ys);
}
