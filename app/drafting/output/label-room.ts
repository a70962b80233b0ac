// Where a label goes: inside its piece as large as it fits, clear of every line; else beside it, with a leader.

import { type Point, polyline } from '../geometry';
import { type Board, type Box, blockOutside, nearestRoom } from '../packing';
import { CLEAR_MM } from '../sheets/marks';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';
import { type Shape, shapesOf } from './label-shapes';
import { middleOf } from './middle';

/** Sizes of a label beside its piece, points. */
const BESIDE_PT = [8, 7.5, SMALLEST_PT];

/** Room the leader's dot needs, mm. */
const DOT_MM = 3;

/** A label in its place. */
export type Label = { readonly ink: readonly Ink[]; readonly box: Box };

/** The label inside a polygon, on a board where the piece's own lines are taken; undefined where it fits at no size. */
export function labelInside(
  paragraphs: readonly Paragraph[],
  outline: readonly Point[],
  lines: Board,
  widthOf: TextWidth,
): Label | undefined {
  return firstThatFits(shapesOf(paragraphs, widthOf), blockOutside(lines, outline, CLEAR_MM), middleOf(outline));
}

/** Where a label may lie beside its piece: `page` has every piece taken, `lines` only what lies inside them. */
export type Beside = { readonly page: Board; readonly lines: Board; readonly room: Box | undefined };

/** The label on the free part of a page as near as can be, with a line that ends in a dot inside the piece. */
export function labelBeside(
  paragraphs: readonly Paragraph[],
  outline: readonly Point[],
  { page, lines, room }: Beside,
  widthOf: TextWidth,
): Label {
  const middle = middleOf(outline);
  const label = room
    ? inRoom(paragraphs, room, widthOf)
    : (firstThatFits(shapesOf(paragraphs, widthOf).filter(isSmallest), page, middle) ??
      inRoom(paragraphs, { ...middle, width: 90, height: 20 }, widthOf));
  const near = { x: label.box.x + label.box.width / 2, y: label.box.y + label.box.height / 2 };
  const free = [lines, { ...lines, taken: lines.taken.map(() => []) }];
  const inside = free
    .map((board) => nearestRoom(blockOutside(board, outline, 0), DOT_MM, DOT_MM, near))
    .find((place) => place !== undefined);
  return withLeader(label, inside ? { x: inside.x + DOT_MM / 2, y: inside.y + DOT_MM / 2 } : middle);
}

function firstThatFits(shapes: readonly Shape[], board: Board, wish: Point): Label | undefined {
  for (const { set, turn } of shapes) {
    const size = turn === 0 ? { width: set.width, height: set.height } : { width: set.height, height: set.width };
    const place = nearestRoom(board, size.width, size.height, wish);
    if (place) return { ink: wordsOf(set, { ...place, ...size }, 'words', turn), box: { ...place, ...size } };
  }
  return undefined;
}

function inRoom(paragraphs: readonly Paragraph[], room: Box, widthOf: TextWidth): Label {
  const set = setWithin(paragraphs, room, BESIDE_PT, widthOf);
  const box = { x: room.x, y: room.y, width: set.width, height: set.height };
  return { ink: wordsOf(set, box, 'words'), box };
}

function isSmallest({ set }: Shape): boolean {
  return set.lines.some((line) => line.size <= SMALLEST_PT);
}

function withLeader(label: Label, target: Point): Label {
  const { x, y, width, height } = label.box;
  const from = { x: within(target.x, x, x + width), y: within(target.y, y, y + height) };
  const away = Math.hypot(target.x - from.x, target.y - from.y);
  if (away < CLEAR_MM) return label;
  const gap = (CLEAR_MM * 0.7) / away;
  const start = { x: from.x + (target.x - from.x) * gap, y: from.y + (target.y - from.y) * gap };
  const dot = polyline([target, { x: target.x + 0.01, y: target.y }]);
  const leader = [stroke('words', 'rule', polyline([start, target])), stroke('words', 'dot', dot)];
  return { ...label, ink: [...label.ink, ...leader] };
}

function within(at: number, low: number, high: number): number {
  return Math.min(Math.max(at, low), high);
}
