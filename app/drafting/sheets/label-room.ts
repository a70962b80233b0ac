import type { Piece } from '../draft-types';
import type { Point } from '../geometry';
import { type Board, type Box, blockOutside, emptyBoard, nearestRoom, rowsOf } from '../packing';
import { outlineOf } from '../pieces/outline';
import { CLEAR_MM, withMarks } from './marks';
import { type Print, printRooms } from './prints';

/** Whether a label in small print fits inside a piece, level or upwards, clear of its seam line and marks. */
export function hasLabelRoom(piece: Piece, whole: boolean, print: Print): boolean {
  const outline = outlineOf(piece.seamLine, whole);
  const { left, top, width, height } = rowsOf([outline]);
  const to = (p: { readonly x: number; readonly y: number }) => ({ x: p.x - left, y: p.y - top });
  const marked = withMarks(emptyBoard(width, height), piece, whole, to, print);
  const board = blockOutside(marked, outline.map(to), CLEAR_MM);
  return labelRoom(board, { x: width / 2, y: height / 2 }, print) !== undefined;
}

/** Free room for a label in small print, level or upwards, near a place. */
export function labelRoom(board: Board, wish: Point, print: Print): Box | undefined {
  for (const { width: long, height: short } of printRooms[print].labels) {
    for (const [width, height] of [
      [long, short],
      [short, long],
    ] as const) {
      const place = nearestRoom(board, width, height, wish);
      if (place) return { ...place, width, height };
    }
  }
  return undefined;
}
