import type { Piece } from '../draft-types';
import { blockOutside, emptyBoard, nearestRoom, rowsOf } from '../packing';
import { outlineOf } from '../pieces/outline';
import { CLEAR_MM, withMarks } from './marks';

/** Room a label takes in small print, mm: a few short lines, two longer ones, or one long one under its title. */
const SHAPES = [
  { width: 48, height: 20 },
  { width: 76, height: 12 },
  { width: 140, height: 9 },
] as const;

/** Room kept for a label beside its piece, mm. */
export const ROOM_BESIDE = SHAPES[0];

/** Whether a label in small print fits inside a piece, level or upwards, clear of its seam line and marks. */
export function hasLabelRoom(piece: Piece, whole: boolean): boolean {
  const outline = outlineOf(piece.seamLine, whole);
  const { left, top, width, height } = rowsOf([outline]);
  const to = (p: { readonly x: number; readonly y: number }) => ({ x: p.x - left, y: p.y - top });
  const marked = withMarks(emptyBoard(width, height), piece, whole, to);
  const board = blockOutside(marked, outline.map(to), CLEAR_MM);
  const middle = { x: width / 2, y: height / 2 };
  return SHAPES.some(
    ({ width: long, height: short }) =>
      nearestRoom(board, long, short, middle) !== undefined || nearestRoom(board, short, long, middle) !== undefined,
  );
}
