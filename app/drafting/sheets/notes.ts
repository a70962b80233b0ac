import type { Mm } from '../../body';
import type { Draft } from '../draft-types';
import { type Box, nearestRoom } from '../packing';
import type { Area } from './area';
import { bottomOf, type Fresh, type Sheet } from './fill';

/** How wide the words may be set, the best to read first, mm. */
const WIDTHS_MM = [96, 120, 74, 160, 190];
/** In small print a line this wide holds a notion; three changes take two lines; titles, care and key always stand there. */
const COLUMN_MM = 96;
const NOTION_LINES = 1.6;
const CHANGE_LINES = 0.75;
const STANDING_LINES = 9;
const LINE_MM = 3.2;
const KEY_MM = 27;
/** First with room for larger print, then for the smallest. */
const AIRY = [1.35, 1];
/** Kept between the words and what lies beside them, mm. */
const CLEAR_MM = 4;

type Said = Pick<Draft, 'notions' | 'adjustments'>;
type Shape = { readonly width: Mm; readonly height: Mm };

/** The sheets, one more where none has room, and where on which the words lie: from the corner of the usable area. */
export type WithNotes = { readonly sheets: readonly Sheet[]; readonly index: number; readonly box: Box };

/** Room for what is said on paper: free room on the earliest page that has it, so that it hardly ever costs a page. */
export function withNotes(draft: Said, sheets: readonly Sheet[], fresh: Fresh, area: Area): WithNotes {
  const shapes = shapesFor(draft);
  for (const [index, sheet] of sheets.entries()) {
    if (sheet.kind !== 'first' && sheet.kind !== 'plain') continue;
    const box = roomOn(sheet, shapes);
    if (box) return { sheets, index, box };
  }
  const more: Sheet = { kind: 'plain', board: fresh.plain, laid: [] };
  const box = roomOn(more, shapes) ?? { x: 0, y: 0, width: area.width, height: area.height };
  return { sheets: [...sheets, more], index: sheets.length, box };
}

/** How wide and high the words may lie: as much as there is to say, in every width. */
function shapesFor({ notions, adjustments }: Said): readonly Shape[] {
  const lines = notions.length * NOTION_LINES + adjustments.length * CHANGE_LINES + STANDING_LINES;
  return AIRY.flatMap((airy) =>
    WIDTHS_MM.map((width) => ({ width, height: KEY_MM + (lines * LINE_MM * airy * COLUMN_MM) / width })),
  );
}

/** As far up as there is room: a roll is cut off below it. */
function roomOn(sheet: Sheet, shapes: readonly Shape[]): Box | undefined {
  const { board } = sheet;
  for (const { width, height } of shapes) {
    const [wide, high] = [width + 2 * CLEAR_MM, height + 2 * CLEAR_MM];
    if (wide > board.width || high > board.height) continue;
    const place = nearestRoom(board, wide, high, { x: board.width / 2, y: bottomOf(sheet) });
    if (place) return { x: place.x + CLEAR_MM, y: place.y + CLEAR_MM, width, height };
  }
  return undefined;
}
