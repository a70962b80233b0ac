// Furniture where pieces leave room for it as they lie: beside them, and where that is too little, within them, clear of
// their lines and of room for their labels. Paper within a piece is printed on anyhow: it costs nothing.

import type { Draft } from '../draft-types';
import type { Point } from '../geometry';
import { type Board, type Box, blockBox, blockOutside, nearestRoom } from '../packing';
import { outlineOf } from '../pieces/outline';
import type { Area } from './area';
import { bareBoard } from './boards';
import { type Fitting, moveTo } from './figure';
import { isFigure, isLoose, type Laid, type Sheet, withLaid } from './fill';
import { blockOf } from './furniture';
import { labelRoom } from './label-room';
import { isOfFirst, type Loose, loose, looseArea } from './loose';
import { CLEAR_MM, withMarks } from './marks';
import { moved } from './move';

/** Kept between furniture and pieces beside it, mm. */
const BESIDE_MM = 3;

/** Where furniture is wished to lie, as shares of a page: where one way leaves no room for all, another may. */
const WISHES = [
  { x: 0.5, y: 0.5 },
  { x: 0, y: 0 },
  { x: 0, y: 1 },
  { x: 1, y: 0.5 },
] as const;

/** The sheets with every item of furniture, each in one of its sizes; undefined where no room was found for all. */
export function among(
  draft: Draft,
  area: Area,
  sheets: readonly Sheet[],
  furniture: readonly (readonly Loose[])[],
): readonly Sheet[] | undefined {
  const stripped = sheets.map((sheet) => withBlock(draft, area, sheet));
  const open = stripped.map((sheet) => roomsOf(draft, area, sheet));
  const largestFirst = [...furniture].sort((a, b) => looseArea(b) - looseArea(a));
  for (const order of [furniture, largestFirst]) {
    for (const wish of WISHES) {
      const filled = inTurn(stripped, open, order, { x: wish.x * area.width, y: wish.y * area.height });
      if (filled) return filled;
    }
  }
  return undefined;
}

function inTurn(
  sheets: readonly Sheet[],
  rooms: readonly (readonly Board[])[],
  order: readonly (readonly Loose[])[],
  wish: Point,
): readonly Sheet[] | undefined {
  const open = [...rooms];
  let filled = sheets;
  for (const sizes of order) {
    const found = roomFor(sizes, filled, open, wish);
    if (!found) return undefined;
    const { index, laid } = found;
    filled = filled.map((sheet, at) => (at === index ? withLaid(sheet, [laid]) : sheet));
    open[index] = (open[index] ?? []).map((board) => blockBox(board, boxOf(laid), CLEAR_MM));
  }
  return filled;
}

type Found = { readonly index: number; readonly laid: Laid<Loose> };

/** Beside pieces on the earliest page that has room, else within one. */
function roomFor(
  sizes: readonly Loose[],
  sheets: readonly Sheet[],
  open: readonly (readonly Board[])[],
  wish: Point,
): Found | undefined {
  const may = sizes.some(isOfFirst) ? sheets.slice(0, 1) : sheets;
  for (const [index, sheet] of may.entries()) {
    const laid = !isOpen(sheet) ? undefined : fitsOn(sheet.board, sizes, BESIDE_MM, wish);
    if (laid) return { index, laid };
  }
  for (const [index, boards] of open.slice(0, may.length).entries()) {
    for (const board of boards) {
      const laid = fitsOn(board, sizes, 0, wish);
      if (laid) return { index, laid };
    }
  }
  return undefined;
}

/** The first of the sizes there is room for, nearest the wish, with `clear` mm all round. */
export function fitsOn(board: Board, sizes: readonly Loose[], clear: number, wish: Point): Laid<Loose> | undefined {
  for (const turned of sizes) {
    const [wide, high] = [turned.rows.width + 2 * clear, turned.rows.height + 2 * clear];
    if (wide > board.width || high > board.height) continue;
    const place = nearestRoom(board, wide, high, wish);
    if (place) return { turned, x: place.x + clear, y: place.y + clear };
  }
  return undefined;
}

/** A board for each piece of the sheet: free is what lies within it, its label's room apart. */
function roomsOf(draft: Draft, area: Area, sheet: Sheet): readonly Board[] {
  if (!isOpen(sheet) || sheet.kind === 'tile') return [];
  const blocks = sheet.laid.filter(isLoose).map(boxOf);
  return sheet.laid
    .filter(isFigure)
    .flatMap((laid) => roomsWithin(draft, area, laid))
    .map((board) => blocks.reduce((left, box) => blockBox(left, box, CLEAR_MM), board));
}

/** A page that a piece fills, with its strip where there is room for it: other furniture then keeps off it. */
function withBlock(draft: Draft, area: Area, sheet: Sheet): Sheet {
  if (sheet.kind !== 'bare') return sheet;
  const within = sheet.laid.filter(isFigure).flatMap((laid) => roomsWithin(draft, area, laid));
  const sizes = loose('block', [blockOf(area)]);
  for (const [board, clear] of [[sheet.board, BESIDE_MM] as const, ...within.map((each) => [each, 0] as const)]) {
    const laid = fitsOn(board, sizes, clear, { x: 0, y: 0 });
    if (laid) return withLaid(sheet, [laid]);
  }
  return sheet;
}

function isOpen({ kind, laid }: Sheet): boolean {
  return kind !== 'bare' || laid.some((each) => isLoose(each));
}

/** What is free within a piece as it lies, clear of its lines and of room for its label. */
export function roomsWithin(draft: Draft, area: Area, laid: Laid<Fitting>): readonly Board[] {
  const free = freeWithin(draft, area, laid);
  if (!free || laid.turned.figure.labelBeside) return free ? [free] : [];
  const label = labelWithin(free, laid, area);
  return label ? [blockBox(free, label, CLEAR_MM)] : [];
}

/** What is free within a piece as it lies, clear of its lines. */
export function freeWithin(draft: Draft, area: Area, { turned, x, y }: Laid<Fitting>): Board | undefined {
  const { piece: index, whole } = turned.figure;
  const piece = draft.pieces[index];
  if (!piece) return undefined;
  const to = moved(moveTo(turned, x, y));
  const outline = outlineOf(piece.seamLine, whole).map(to);
  return blockOutside(withMarks(bareBoard(area), piece, whole, to), outline, CLEAR_MM);
}

/** Room on such a board for the piece's label. */
export function labelWithin(free: Board, { turned, x, y }: Laid<Fitting>, { print }: Area): Box | undefined {
  return labelRoom(free, { x: x + turned.rows.width / 2, y: y + turned.rows.height / 2 }, print);
}

function boxOf({ turned, x, y }: Laid<Loose>): Box {
  return { x, y, width: turned.rows.width, height: turned.rows.height };
}
