import type { Piece } from '../draft-types';
import { type Point, rotate } from '../geometry';
import { type Box, block, emptyBoard, nearestRoom, type Rows, rowsOf, type Stamp, stampOf } from '../packing';
import { cornersOf, outlineOf } from '../pieces/outline';
import { hasLabelRoom } from './label-room';
import type { Move } from './layout';
import { type Print, printRooms } from './prints';

/** Kept between a piece and the label beside it, mm: room for the leader. */
const LEADER_MM = 4;

/** Kept between cut lines, mm: scissors pass, and rounding never makes two pieces touch. */
export const PIECE_GAP_MM = 3;

type Size = Pick<Box, 'width' | 'height'>;

/** A piece as the sheets see it: its outline to cut, and the room its label needs beside it, where it will not fit inside. */
export type Figure = {
  readonly piece: number;
  readonly whole: boolean;
  readonly outline: readonly Point[];
  readonly labelBeside: Size | undefined;
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
  const beside = roomBeside(outline, alone, figure.labelBeside);
  const rows = rowsOf([outline, cornersOf(beside)]);
  return { figure, turn, rows, room: { ...beside, x: beside.x - rows.left, y: beside.y - rows.top } };
}

/** Room for a label where it makes the piece take least: in a corner of the box round it, else along its longer side. */
function roomBeside(outline: readonly Point[], { left, top, width, height }: Rows, label: Size): Box {
  const [aside, above] = [label.width + LEADER_MM, label.height + LEADER_MM];
  const around = emptyBoard(width + 2 * aside, height + 2 * above);
  const board = block(
    around,
    outline.map(({ x, y }) => ({ x: x - left + aside, y: y - top + above })),
    LEADER_MM,
  );
  const [halfWidth, halfHeight] = [label.width / 2, label.height / 2];
  const [farX, farY] = [width - halfWidth, height - halfHeight];
  const wishes = [halfHeight, farY].flatMap((y) => [halfWidth, farX].map((x): Point => ({ x, y })));
  const found = wishes.flatMap((wish) => {
    const place = nearestRoom(board, label.width, label.height, { x: wish.x + aside, y: wish.y + above });
    return place ? [{ x: place.x - aside, y: place.y - above }] : [];
  });
  const wide = ({ x }: Point) => Math.max(width, x + label.width) - Math.min(0, x);
  const high = ({ y }: Point) => Math.max(height, y + label.height) - Math.min(0, y);
  const usual = height > width ? { x: width + LEADER_MM, y: 0 } : { x: 0, y: height + LEADER_MM };
  const longest = (place: Point) => Math.max(wide(place), high(place));
  const cost = (place: Point) => (longest(place) > longest(usual) ? Infinity : wide(place) * high(place));
  const best = found.reduce((least, place) => (cost(place) < cost(least) ? place : least), usual);
  return { x: best.x + left, y: best.y + top, ...label };
}

export function fitting(turned: Turned): Fitting {
  return { ...turned, stamp: stampOf(turned.rows, PIECE_GAP_MM) };
}

/** The move that brings a turned figure's top left corner to x, y. */
export function moveTo(turned: Turned, x: number, y: number): Move {
  return { turn: turned.turn, x: x - turned.rows.left, y: y - turned.rows.top };
}
