// The boards pages start from: what their furniture takes is not free.

import { type Board, type Box, blockBox, blockRows, emptyBoard } from '../packing';
import type { Area } from './area';
import { freshSheet, type Sheet } from './fill';
import { stripAcross, stripReach } from './furniture';
import { OVERLAP_MM, type TilePage } from './tiles';

/** Kept between a tiled piece and a small one that shares its page, and beside overlaps, mm. */
const CLEAR_MM = 3;

/** Boards lie on the usable area: 0, 0 is its top left corner. */
export function bareBoard(area: Area): Board {
  return emptyBoard(area.width, area.height);
}

export function plainBoard(area: Area): Board {
  return withBox(bareBoard(area), area, stripBox(area));
}

/** The first page's, below and beside its head. */
export function headedBoard(area: Area, { x, y, width, height }: Box): Board {
  const box = { x: x - CLEAR_MM, y, width: width + 2 * CLEAR_MM, height: height + CLEAR_MM };
  return withBox(plainBoard(area), area, box);
}

/** What is left of a tile's page beside its piece; the overlaps are glued over and stay free. */
export function tileSheet(area: Area, { turned, move, tile }: TilePage): Sheet {
  const { window, joins } = tile;
  const x = move.x + turned.rows.left - area.x;
  const y = move.y + turned.rows.top - area.y;
  const wide = OVERLAP_MM + CLEAR_MM;
  const edges: readonly (readonly [string | undefined, Box])[] = [
    [joins.left, { ...window, width: wide }],
    [joins.right, { ...window, x: window.x + window.width - wide, width: wide }],
    [joins.up, { ...window, height: wide }],
    [joins.down, { ...window, y: window.y + window.height - wide, height: wide }],
  ];
  const taken = blockRows(plainBoard(area), turned.rows, x, y, CLEAR_MM);
  const board = edges.reduce((left, [name, box]) => (name === undefined ? left : withBox(left, area, box)), taken);
  return freshSheet('tile', board);
}

/** The part of a page under its strip: what a tile shows. */
export function windowOf(area: Area): Box {
  return { ...area, y: area.y + stripReach(area), height: area.height - stripReach(area) };
}

function stripBox(area: Area): Box {
  const { inches } = stripAcross(area);
  return { x: area.x, y: area.y, width: inches.to.x + CLEAR_MM - area.x, height: stripReach(area) };
}

function withBox(board: Board, area: Area, box: Box): Board {
  return blockBox(board, { ...box, x: box.x - area.x, y: box.y - area.y });
}
