import type { Mm } from '../../body';
import type { Draft } from '../draft-types';
import { type Box, nearestRoom } from '../packing';
import { bottomOf, isLoose, type Laid, relaid, type Sheet, withLaid } from './fill';
import { type Loose, type Size, standing } from './loose';

/** How wide the words may be set, the best to read first, mm. */
const WIDTHS_MM = [96, 120, 74, 160, 190];
const CARE_WIDTHS_MM = [96, 74, 56, 150];
/** In small print: lines this wide that a notion takes, a note, a change with its reason, and care. */
const COLUMN_MM = 96;
const NOTION_LINES = 1.6;
const NOTE_LINES = 1.6;
const CHANGE_LINES = 1.35;
const CARE_LINES = 4.6;
/** A title takes a line, and the air over it. */
const TITLE_LINES = 1.4;
const LINE_MM = 3.2;
/** Between the words and the key, mm. */
export const APART_MM = 1.5;
/** How much more room larger print takes. */
const AIRY = 1.35;
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

type Said = Pick<Draft, 'notions' | 'adjustments' | 'flags' | 'outfit'>;

/** The key in each of its sizes, where it lies apart from the words. */
export const keySizes: readonly Size[] = [KEY.column, 2 * KEY.column].map((width) => ({
  width,
  height: keyHeight(width),
}));

/** What of it the words hold beside what is told: care, and the key below them. */
export type Holding = { readonly cared: boolean; readonly keyed: boolean };

/** The sizes the words may have, in small print: as much as there is to say, in every width. */
export function noteSizes(said: Said, holding: Holding): readonly Size[] {
  return WIDTHS_MM.map((width) => sizeOf(said, holding, width, 1));
}

/** Those of the words on care, where they lie apart. */
export const careSizes: readonly Size[] = CARE_WIDTHS_MM.map((width) => ({
  width,
  height: careLines(width) * LINE_MM,
}));

export const holdings = {
  notes: { cared: true, keyed: true },
  words: { cared: true, keyed: false },
  told: { cared: false, keyed: false },
} as const satisfies Readonly<Record<string, Holding>>;

/** The sheets with the words moved to where they may be printed larger, on the earliest sheet that has room, near what lies there. */
export function airier(said: Said, sheets: readonly Sheet[]): readonly Sheet[] {
  const at = sheets.findIndex(({ laid }) => laid.some(isWords));
  const words = sheets[at]?.laid.find(isWords);
  if (!words) return sheets;
  const { kind } = words.turned;
  const sizes = WIDTHS_MM.map((width) => sizeOf(said, holdings[kind], width, AIRY));
  const without = sheets.map((sheet) =>
    sheet.laid.some(isWords)
      ? relaid(
          sheet,
          sheet.laid.filter((laid) => !isWords(laid)),
        )
      : sheet,
  );
  for (const [index, sheet] of without.entries()) {
    const found = sheet.kind === 'bare' ? undefined : roomOn(sheet, sizes);
    if (found)
      return without.map((each, i) => (i === index ? withLaid(each, standing(words.turned.kind, found)) : each));
  }
  return sheets;
}

type WordsKind = keyof typeof holdings;

function isWords(laid: Laid): laid is Laid<Loose & { readonly kind: WordsKind }> {
  return isLoose(laid) && laid.turned.kind in holdings;
}

function sizeOf(said: Said, { cared, keyed }: Holding, width: Mm, airy: number): Size {
  const lines = toldLines(said, width) + (cared ? careLines(width) : 0);
  return { width, height: (keyed ? keyHeight(width) + APART_MM : 0) + lines * LINE_MM * airy };
}

/** How many lines there are to say; every notion begins one, and each garment of an outfit has its name over its own. */
function toldLines({ notions, adjustments, flags, outfit = [] }: Said, width: Mm): number {
  const share = COLUMN_MM / width;
  const under = (count: number, each: number) => (count > 0 ? TITLE_LINES + Math.ceil(count * each * share) : 0);
  const notes = flags.filter(({ severity }) => severity === 'note').length;
  const titled = under(notes, NOTE_LINES) + under(adjustments.length, CHANGE_LINES);
  return notions.length * Math.max(1, NOTION_LINES * share) + outfit.length + titled + TITLE_LINES;
}

function careLines(width: Mm): number {
  return TITLE_LINES + Math.ceil((CARE_LINES * COLUMN_MM) / width);
}

/** In the first size there is room for. */
function roomOn(sheet: Sheet, sizes: readonly Size[]): Box | undefined {
  for (const { width, height } of sizes) {
    const [wide, high] = [width + 2 * CLEAR_MM, height + 2 * CLEAR_MM];
    if (wide > sheet.board.width || high > sheet.board.height) continue;
    const place = nearestRoom(sheet.board, wide, high, { x: sheet.board.width / 2, y: bottomOf(sheet) });
    if (place) return { x: place.x + CLEAR_MM, y: place.y + CLEAR_MM, width, height };
  }
  return undefined;
}
