import type { Draft } from '../draft-types';
import { type Board, type Box, block, blockBox, blockLine, nearestRoom } from '../packing';
import { cornersOf, outlineOf } from '../pieces/outline';
import type { Area } from './area';
import { bareBoard } from './boards';
import { type Fitting, moveTo } from './figure';
import { isFigure, isLoose, type Laid, type Sheet } from './fill';
import { blockOf, CHECK_MM, largeBlock, longIn, squareIn, stripAcross, stripBlock, stripIn } from './furniture';
import type { Furniture, Page, Placed, Strip } from './layout';
import { isOfFirst, type Loose } from './loose';
import { withMarks } from './marks';
import { moved } from './move';
import { holdings } from './notes';
import type { TilePage } from './tiles';

/** Kept round the strip where it lies beside or inside a piece, mm. */
const STRIP_CLEAR_MM = 2;

/** A filled sheet as a page: boards start at the usable area's corner, pages at the paper's. */
export function pageOf(
  draft: Draft,
  sheet: Sheet,
  area: Area,
  page: {
    readonly name: string;
    readonly width: number;
    readonly height: number;
    readonly tiled?: TilePage | undefined;
  },
): Page {
  const { name, width, height, tiled } = page;
  const laid = sheet.laid.filter(isFigure).map((each) => placedOf(each, area));
  const loose = sheet.laid.filter(isLoose);
  const strip = stripOf(draft, laid, sheet, area);
  const furniture = furnitureOf(
    loose.filter(({ turned }) => !isOfFirst(turned) && turned.kind !== 'block'),
    area,
  );
  if (!tiled) return { name, width, height, placed: laid, strip, ...furniture };
  const { turned, move, tile } = tiled;
  const whole: Placed = { piece: turned.figure.piece, whole: turned.figure.whole, move, window: tile.window };
  return { name, width, height, placed: [whole, ...laid], strip, tile, ...furniture };
}

function placedOf({ turned, x, y }: Laid<Fitting>, area: Area): Placed {
  const { figure, room } = turned;
  const at = { x: x + area.x, y: y + area.y };
  const placed = { piece: figure.piece, whole: figure.whole, move: moveTo(turned, at.x, at.y) };
  return room ? { ...placed, room: { ...room, x: room.x + at.x, y: room.y + at.y } } : placed;
}

function stripOf(draft: Draft, laid: readonly Placed[], sheet: Sheet, area: Area): Strip {
  const free = sheet.laid.filter(isLoose).find(({ turned }) => turned.kind === 'strip');
  if (free) return stripIn(boxOf(free, area));
  const block = sheet.laid.filter(isLoose).find(({ turned }) => turned.kind === 'block');
  if (block) return blockAt(boxOf(block, area), area);
  return sheet.kind === 'bare' ? stripAmong(draft, laid, sheet, area) : stripAcross(area);
}

const blockAt = ({ x, y }: Pick<Box, 'x' | 'y'>, { print }: Area): Strip =>
  print === 'large' ? largeBlock(x, y) : stripBlock(x, y);

/** Where furniture lies on its page. */
export function boxOf({ turned, x, y }: Laid<Loose>, area: Area): Box {
  return { x: x + area.x, y: y + area.y, width: turned.rows.width, height: turned.rows.height };
}

function furnitureOf(laid: readonly Laid<Loose>[], area: Area): Furniture {
  const boxes = laid.map((each): Furniture => {
    const { kind } = each.turned;
    const box = boxOf(each, area);
    if (kind === 'long') return { long: longIn(box) };
    if (kind === 'square') return { square: { ...box, height: CHECK_MM } };
    if (kind === 'checks') return { card: box, square: squareIn(box) };
    if (kind in holdings) return { notes: { words: box, ...holdings[kind as keyof typeof holdings] } };
    return { [kind]: box };
  });
  return Object.assign({}, ...boxes);
}

/** A piece fills this page: the strip lies beside it where it can, else on it, clear of its lines. */
function stripAmong(draft: Draft, laid: readonly Placed[], sheet: Sheet, area: Area): Strip {
  const lines = laid.reduce((board, placed) => withLines(board, draft, placed, area), bareBoard(area));
  const middle = { x: area.width / 2, y: area.height / 2 };
  const corner = { x: 0, y: 0 };
  const outside = sheet.laid.filter(isFigure).reduce(withPiece, bareBoard(area));
  const { width, height } = blockOf(area);
  const place = nearestRoom(outside, width, height, corner) ?? nearestRoom(lines, width, height, middle);
  return place ? blockAt({ x: place.x + area.x, y: place.y + area.y }, area) : stripAcross(area);
}

/** The board with a piece and its label's room taken. */
function withPiece(board: Board, { turned, x, y }: Laid<Fitting>): Board {
  const outline = turned.figure.outline.map(moved(moveTo(turned, x, y)));
  const taken = block(board, outline, STRIP_CLEAR_MM);
  const { room } = turned;
  return room ? blockBox(taken, { ...room, x: room.x + x, y: room.y + y }, STRIP_CLEAR_MM) : taken;
}

/** The board with all that is drawn and written of a piece taken, and its label's room. */
function withLines(board: Board, draft: Draft, placed: Placed, area: Area): Board {
  const piece = draft.pieces[placed.piece];
  if (!piece) return board;
  const to = moved({ ...placed.move, x: placed.move.x - area.x, y: placed.move.y - area.y });
  const rings = [piece.cutLine, piece.seamLine].map((ring) => outlineOf(ring, placed.whole).map(to));
  const room = placed.room ? [cornersOf({ ...placed.room, x: placed.room.x - area.x, y: placed.room.y - area.y })] : [];
  return [...rings, ...room]
    .map((ring) => [...ring, ...ring.slice(0, 1)])
    .reduce(
      (left, line) => blockLine(left, line, STRIP_CLEAR_MM),
      withMarks(board, piece, placed.whole, to, area.print),
    );
}
