import type { Piece } from '../draft-types';
import { type Point, rotate } from '../geometry';
import { type Box, type Rows, rowsOf, type Stamp, stampOf } from '../packing';
import { cornersOf, outlineOf } from '../pieces/outline';
import { hasLabelRoom } from './label-room';
import type { Move } from './layout';
import { type Print, printRooms } from './prints';

/** Kept between a piece and the label beside it, mm: room for the leader. */
const LEADER_MM = 4;

/** Kept between cut lines, mm: scissors pass, and rounding never makes two pieces touch. */
export const PIECE_GAP_MM = 3;

/** A piece as the sheets see it: its outline to cut, and the room its label needs beside it, where it will not fit inside. */
export type Figure = {
  readonly piece: number;
  readonly whole: boolean;
  readonly outline: readonly Point[];
  readonly labelBeside: Pick<Box, 'width' | 'height'> | undefined;
};

/** A figure turned: its rows, from the turned outline's top left corner, and the label's room in the same place. */
export type Turned = {
  readonly figure: Figure;
  readonly turn: number;
  readonly rows: Rows;
  readonly room?: Box;
};

/** A turned figure ready to be settled among others. */
export type Fitting = Turned & { readonly stamp: Stamp };

export function figureOf(piece: Piece, index: number, halves: boolean, print: Print = 'usual'): Figure {
  const whole = piece.onFold && !halves;
  return {
    piece: index,
    whole,
    outline: outlineOf(piece.cutLine, whole),
    labelBeside: hasLabelRoom(piece, whole, print) ? undefined : printRooms[print].labels[0],
  };
}

export function turnFigure(figure: Figure, turn: number): Turned {
  const outline = figure.outline.map((p) => rotate(p, turn));
  const alone = rowsOf([outline]);
  if (!figure.labelBeside) return { figure, turn, rows: alone };
  const tall = alone.height > alone.width;
  const room: Box = {
    x: tall ? alone.width + LEADER_MM : 0,
    y: tall ? 0 : alone.height + LEADER_MM,
    ...figure.labelBeside,
  };
  const { left, top } = alone;
  const rows = rowsOf([outline, cornersOf({ ...room, x: room.x + left, y: room.y + top })]);
  return { figure, turn, rows, room };
}

export function fitting(turned: Turned): Fitting {
  return { ...turned, stamp: stampOf(turned.rows, PIECE_GAP_MM) };
}

/** The move that brings a turned figure's top left corner to x, y. */
export function moveTo(turned: Turned, x: number, y: number): Move {
  return { turn: turned.turn, x: x - turned.rows.left, y: y - turned.rows.top };
}
