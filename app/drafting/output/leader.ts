// The line from a label beside its piece to a dot inside the piece.

import { type Point, polyline } from '../geometry';
import { type Board, type Box, blockOutside, nearestRoom } from '../packing';
import { CLEAR_MM } from '../sheets/marks';
import { crossesAny } from './crossing';
import { type Ink, stroke, type TextWidth } from './ink';
import { middleOf } from './middle';

/** Room the dot needs, mm. */
const DOT_MM = 3;

/** From the words to the line, mm. */
const GAP_MM = 1;

/** Where on the label's box a leader may start, as shares of its sides, the best first; past its sides where words lie in the way. */
const STARTS = [0.5, 0.15, 0.85, 0.3, 0.7, -0.5, 1.5, -1.5, 2.5].flatMap((share) => [
  { x: share, y: 0.5 },
  { x: 0.5, y: share },
]);

/** A piece as a leader sees it: its outline, and a board with its marks taken. */
export type Target = { readonly outline: readonly Point[]; readonly lines: Board };

/** The leader and its dot, as near to the box as may be and clear of words; none where the box touches the piece. */
export function leader(
  box: Box,
  { outline, lines }: Target,
  words: readonly Ink[],
  widthOf: TextWidth,
): readonly Ink[] {
  const boards = [lines, { ...lines, taken: lines.taken.map(() => []) }].map((board) =>
    blockOutside(board, outline, 0),
  );
  const dots = boards.flatMap((board) => STARTS.map((start) => dotNear(start, box, board) ?? middleOf(outline)));
  const ways = [...dots.map((dot) => wayTo(dot, box)), ...dots.flatMap((dot) => waysFromSides(dot, box))];
  const way = ways.find((each) => !crossesAny(each, words, widthOf)) ?? ways[0];
  const [from, dot] = way ?? [];
  if (!from || !dot || Math.hypot(dot.x - from.x, dot.y - from.y) < CLEAR_MM) return [];
  return [
    stroke('words', 'rule', polyline([from, dot])),
    stroke('words', 'dot', polyline([dot, { x: dot.x + 0.01, y: dot.y }])),
  ];
}

function dotNear(start: Point, box: Box, board: Board): Point | undefined {
  const wish = { x: box.x + box.width * start.x, y: box.y + box.height * start.y };
  const place = nearestRoom(board, DOT_MM, DOT_MM, wish);
  return place && { x: place.x + DOT_MM / 2, y: place.y + DOT_MM / 2 };
}

/** The straight way from just outside the box to the dot. */
function wayTo(dot: Point, { x, y, width, height }: Box): readonly Point[] {
  const from = { x: within(dot.x, x, x + width), y: within(dot.y, y, y + height) };
  const away = Math.hypot(dot.x - from.x, dot.y - from.y);
  const gap = away > GAP_MM ? GAP_MM / away : 0;
  return [{ x: from.x + (dot.x - from.x) * gap, y: from.y + (dot.y - from.y) * gap }, dot];
}

/** Ways from the middle of each side, for where the straight one runs over the label next to it. */
const waysFromSides = (dot: Point, { x, y, width, height }: Box): readonly (readonly Point[])[] => [
  [{ x: x - GAP_MM, y: y + height / 2 }, dot],
  [{ x: x + width + GAP_MM, y: y + height / 2 }, dot],
  [{ x: x + width / 2, y: y - GAP_MM }, dot],
  [{ x: x + width / 2, y: y + height + GAP_MM }, dot],
];

function within(at: number, low: number, high: number): number {
  return Math.min(Math.max(at, low), high);
}
