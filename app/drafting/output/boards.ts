// What is taken on a page, so that words find room.

import type { Draft } from '../draft-types';
import type { Path, Point } from '../geometry';
import { type Board, type Box, block, blockBoxes, blockLines, emptyBoard } from '../packing';
import { outlineOf } from '../pieces/outline';
import { BOTTOM_MARGIN_MM, EDGE_MARGIN_MM } from '../sheets/area';
import { SQUARE_WORDS_MM, STITCHES_MM } from '../sheets/furniture';
import type { CheckLine, Cover, Page, Placed, Strip } from '../sheets/layout';
import { CLEAR_MM } from '../sheets/marks';
import { moved } from '../sheets/move';
import { OVERLAP_MM } from '../sheets/tiles';
import { inkOutline } from './crossing';
import type { Ink, TextWidth } from './ink';

/** How far ticks and words of the long check line reach, mm. */
const LONG_REACH_MM = 6.5;

/** A page with its margins, strip and cover taken; found once for each page. */
export function furnished(page: Page): Board {
  const board = furnishedPages.get(page) ?? withFurniture(page);
  furnishedPages.set(page, board);
  return board;
}
const furnishedPages = new WeakMap<Page, Board>();

function withFurniture(page: Page): Board {
  const { width, height, strip, cover, card, square, wrong, joining, long, notes, care, key } = page;
  const margins: readonly Box[] = [
    { x: 0, y: 0, width: EDGE_MARGIN_MM, height },
    { x: width - EDGE_MARGIN_MM, y: 0, width: EDGE_MARGIN_MM, height },
    { x: 0, y: 0, width, height: EDGE_MARGIN_MM },
    { x: 0, y: height - BOTTOM_MARGIN_MM, width, height: BOTTOM_MARGIN_MM },
  ];
  const head = cover ? [cover.title, underTitle(cover), ...cover.map.map((cell) => cell.box)] : [];
  const furniture = [
    card,
    square && underSquare(square),
    wrong,
    joining,
    long && longRoom(long),
    notes?.words,
    care,
    key,
  ].filter((box) => box !== undefined);
  return blockBoxes(emptyBoard(width, height), [...margins, stripBox(strip), ...head, ...furniture]);
}

function underTitle({ title, width }: Cover): Box {
  return { x: title.x, y: title.y + title.height, width, height: STITCHES_MM + CLEAR_MM };
}

/** The board with every piece of the page taken but where its own label may go. */
export function withPieces(board: Board, draft: Draft, page: Page): Board {
  return page.placed.reduce((left, placed) => {
    const piece = draft.pieces[placed.piece];
    return piece ? block(left, outlineOn(piece.cutLine, placed), CLEAR_MM) : left;
  }, board);
}

/** The board with all that is drawn and written taken. */
export function withInk(board: Board, ink: readonly Ink[], widthOf: TextWidth): Board {
  return blockLines(
    board,
    ink.map((each) => inkOutline(each, widthOf)),
    CLEAR_MM / 2,
  );
}

/** The board with all but the window taken, and the overlaps round it too: what lies there may be cut off. */
export function withinWindow(board: Board, { x, y, width, height }: Box): Board {
  const outside: readonly Box[] = [
    { x: 0, y: 0, width: x + OVERLAP_MM, height: board.height },
    { x: x + width - OVERLAP_MM, y: 0, width: board.width, height: board.height },
    { x: 0, y: 0, width: board.width, height: y + OVERLAP_MM },
    { x: 0, y: y + height - OVERLAP_MM, width: board.width, height: board.height },
  ];
  return blockBoxes(board, outside);
}

/** The closed outline of a ring where it lies on its page. */
export function outlineOn(ring: Path, placed: Placed): readonly Point[] {
  return outlineOf(ring, placed.whole).map(moved(placed.move));
}

/** The square and the words under it. */
function underSquare(square: Box): Box {
  return { ...square, height: square.height + SQUARE_WORDS_MM };
}

/** What the long check line takes: ticks and words lie on its left as it runs. */
function longRoom({ from, to }: CheckLine): Box {
  const [wide, high] = [Math.abs(to.x - from.x), Math.abs(to.y - from.y)];
  const [left, up] = wide > high ? [CLEAR_MM, LONG_REACH_MM] : [LONG_REACH_MM, CLEAR_MM];
  const [x, y] = [Math.min(from.x, to.x) - left, Math.min(from.y, to.y) - up];
  return { x, y, width: wide + left + CLEAR_MM, height: high + up + CLEAR_MM };
}

function stripBox({ words, millimetres, inches }: Strip): Box {
  const x = Math.min(words.x, millimetres.from.x, inches.from.x) - CLEAR_MM;
  const right = Math.max(words.x + words.width, millimetres.to.x, inches.to.x) + CLEAR_MM;
  const bottom = Math.max(words.y + words.height, millimetres.to.y, inches.to.y) + CLEAR_MM;
  return { x, y: words.y, width: right - x, height: bottom - words.y };
}
