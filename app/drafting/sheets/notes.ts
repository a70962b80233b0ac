import type { Mm } from '../../body';
import type { Draft } from '../draft-types';
import { type Box, blockBox, nearestRoom } from '../packing';
import type { Area } from './area';
import { bottomOf, type Fresh, type Sheet } from './fill';

/** How wide the words may be set, the best to read first, mm. */
const WIDTHS_MM = [96, 120, 74, 160, 190];
/** In small print: lines this wide that a notion takes, a change, and care. */
const COLUMN_MM = 96;
const NOTION_LINES = 1.6;
const CHANGE_LINES = 0.75;
const CARE_LINES = 4.6;
/** A title takes a line, and the air over it. */
const TITLE_LINES = 1.4;
const LINE_MM = 3.2;
/** Between the words and the key, mm. */
export const APART_MM = 1.5;
/** First with room for larger print, then for the smallest. */
const AIRY = [1.35, 1];
/** Kept between the words and what lies beside them, mm. */
const CLEAR_MM = 4;

/** The key of lines and notches: so many lines, as many beside each other as the width has room for. */
const KEY = { lines: 6, line: 3.9, column: 78 } as const;

export function keyColumns(width: Mm): number {
  return Math.max(1, Math.floor(width / KEY.column));
}

export function keyHeight(width: Mm): Mm {
  return Math.ceil(KEY.lines / keyColumns(width)) * KEY.line;
}

type Said = Pick<Draft, 'notions' | 'adjustments' | 'outfit'>;
type Shape = { readonly width: Mm; readonly height: Mm };
type Fill = (started: readonly Sheet[]) => readonly Sheet[];
type Paper = { readonly fresh: Fresh; readonly area: Area; readonly roll: boolean; readonly fill: Fill };

type Found = { readonly sheets: readonly Sheet[]; readonly index: number; readonly box: Box };

/** The sheets, and where on which the words lie: from the corner of the usable area; `apart`: the key finds its place elsewhere. */
export type WithNotes = Found & { readonly apart: boolean };

/**
 * Pieces filled in, and room for what is said on paper: what they leave free on the earliest page that has it; else pieces
 * are filled in round the words on the first page, where that takes no page more; else the words have a page of their own.
 * Where there is but one page, the key lies in place of the map.
 */
export function withNotes(draft: Said, started: readonly Sheet[], { fresh, area, roll, fill }: Paper): WithNotes {
  const sheets = fill(started);
  const apart = sheets.length === 1;
  const found =
    among(sheets, shapesFor(draft, apart), roll) ?? round(shapesFor(draft, apart), started, sheets.length, fill);
  if (found) return { ...found, apart };
  const more: Sheet = { kind: 'plain', board: fresh.plain, laid: [] };
  const box = roomOn(more, shapesFor(draft, false), roll) ?? { x: 0, y: 0, width: area.width, height: area.height };
  return { sheets: [...sheets, more], index: sheets.length, box, apart: false };
}

function among(sheets: readonly Sheet[], shapes: readonly Shape[], roll: boolean): Found | undefined {
  for (const [index, sheet] of sheets.entries()) {
    const box = sheet.kind === 'bare' ? undefined : roomOn(sheet, shapes, roll);
    if (box) return { sheets, index, box };
  }
  return undefined;
}

/** How wide and high the words may lie: as much as there is to say, in every width. */
function shapesFor(said: Said, apart: boolean): readonly Shape[] {
  return AIRY.flatMap((airy) =>
    WIDTHS_MM.map((width) => ({
      width,
      height: (apart ? 0 : keyHeight(width) + APART_MM) + linesIn(said, width) * LINE_MM * airy,
    })),
  );
}

/** How many lines there are to say; every notion begins one, and each garment of an outfit has its name over its own. */
function linesIn({ notions, adjustments, outfit = [] }: Said, width: Mm): number {
  const share = COLUMN_MM / width;
  const changes = adjustments.length > 0 ? TITLE_LINES + Math.ceil(adjustments.length * CHANGE_LINES * share) : 0;
  const told = notions.length * Math.max(1, NOTION_LINES * share) + outfit.length;
  return told + changes + 2 * TITLE_LINES + Math.ceil(CARE_LINES * share);
}

/** The words in a lower corner of the first page, pieces round them. */
function round(
  shapes: readonly Shape[],
  [first, ...others]: readonly Sheet[],
  most: number,
  fill: Fill,
): Found | undefined {
  for (const { width, height } of first ? shapes.slice(WIDTHS_MM.length) : []) {
    if (!first || width > first.board.width) continue;
    const y = first.board.height - height;
    const box = { x: first.board.width - width, y, width, height };
    const sheets = fill([{ ...first, board: blockBox(first.board, box, CLEAR_MM) }, ...others]);
    if (sheets.length <= most) return { sheets, index: 0, box };
  }
  return undefined;
}

/** In the first shape there is room for, near what lies there; on a roll in the one that ends highest, for it is cut off below. */
function roomOn(sheet: Sheet, shapes: readonly Shape[], roll: boolean): Box | undefined {
  let best: Box | undefined;
  for (const shape of shapes) {
    const box = placeOf(sheet, shape, roll ? 0 : bottomOf(sheet));
    if (box && !roll) return box;
    if (box && (!best || endOf(box, sheet) < endOf(best, sheet))) best = box;
  }
  return best;
}

const endOf = ({ y, height }: Box, sheet: Sheet): Mm => Math.max(y + height, bottomOf(sheet));

function placeOf({ board }: Sheet, { width, height }: Shape, wished: Mm): Box | undefined {
  const [wide, high] = [width + 2 * CLEAR_MM, height + 2 * CLEAR_MM];
  if (wide > board.width || high > board.height) return undefined;
  const place = nearestRoom(board, wide, high, { x: board.width / 2, y: wished });
  return place && { x: place.x + CLEAR_MM, y: place.y + CLEAR_MM, width, height };
}
