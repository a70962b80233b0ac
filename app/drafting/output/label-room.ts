// Where a label goes: inside its piece as large as it fits, clear of every line; else beside it, with a leader.

import type { Mm } from '../../body';
import type { Point } from '../geometry';
import { type Board, type Box, blockOutside, nearestRoom } from '../packing';
import { CLEAR_MM } from '../sheets/marks';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, sizesOf, smallestOf, type TextWidth } from './ink';
import { type Shape, shapesOf } from './label-shapes';
import { leader, type Target } from './leader';
import { middleOf } from './middle';

/** Sizes of a label beside its piece, points. */
const BESIDE_PT = [8, 7.5, SMALLEST_PT];

/** A label in its place; beside its piece, with a line to it that keeps clear of whatever words there turn out to be. */
export type Label = { readonly ink: readonly Ink[]; readonly box: Box; readonly lead?: Lead };
type Lead = (words: readonly Ink[]) => readonly Ink[];

/** The label inside a polygon, on a board where the piece's own lines are taken; undefined where it fits at no size. */
export function labelInside(
  paragraphs: readonly Paragraph[],
  outline: readonly Point[],
  lines: Board,
  widthOf: TextWidth,
): Label | undefined {
  return firstThatFits(shapesOf(paragraphs, widthOf), blockOutside(lines, outline, CLEAR_MM), middleOf(outline));
}

/** Where a label may lie beside its piece: where every piece is taken, and the room that was kept for it. */
export type Beside = { readonly page: () => Board; readonly room: Box | undefined };

/** The label on the free part of a page as near as can be, with a line that ends in a dot inside the piece. */
export function labelBeside(
  paragraphs: readonly Paragraph[],
  target: Target,
  { page, room }: Beside,
  widthOf: TextWidth,
): Label {
  const middle = middleOf(target.outline);
  const label = room
    ? inRoom(paragraphs, room, widthOf)
    : (firstThatFits([...shapesOf(paragraphs, widthOf)].filter(isSmallest(widthOf)), page(), middle) ??
      inRoom(paragraphs, { ...middle, width: 90, height: 20 }, widthOf));
  return { ...label, lead: (words) => leader(label.box, target, words, widthOf) };
}

/** The room a label takes beside its piece, no wider than it has to be and no narrower than asked. */
export function roomBeside(
  paragraphs: readonly Paragraph[],
  width: Mm,
  widthOf: TextWidth,
): Pick<Box, 'width' | 'height'> {
  const set = setWithin(paragraphs, { width, height: Infinity }, sizesOf(BESIDE_PT, widthOf), widthOf);
  return { width: Math.max(width, set.width), height: set.height };
}

function firstThatFits(shapes: Iterable<Shape>, board: Board, wish: Point): Label | undefined {
  for (const { set, turn } of shapes) {
    const size = turn === 0 ? { width: set.width, height: set.height } : { width: set.height, height: set.width };
    const place = nearestRoom(board, size.width, size.height, wish);
    if (place) return { ink: wordsOf(set, { ...place, ...size }, 'words', turn), box: { ...place, ...size } };
  }
  return undefined;
}

function inRoom(paragraphs: readonly Paragraph[], room: Box, widthOf: TextWidth): Label {
  const set = setWithin(paragraphs, room, sizesOf(BESIDE_PT, widthOf), widthOf);
  const box = { x: room.x, y: room.y, width: set.width, height: set.height };
  return { ink: wordsOf(set, box, 'words'), box };
}

const isSmallest =
  (widthOf: TextWidth) =>
  ({ set }: Shape): boolean =>
    set.lines.some((line) => line.size <= smallestOf(widthOf));
