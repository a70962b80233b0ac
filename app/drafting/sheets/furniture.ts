// What pages carry beside pieces, and where: the strip with its check lines, and the first page's head.

import { BANK_CARD_MM, MM_PER_INCH, type Mm } from '../../body';
import type { Box } from '../packing';
import type { Area } from './area';
import type { CheckLine, Cover, Strip } from './layout';
import { type Mapped, mapBandHeight } from './map';

export const CHECK_MM = 50;
export const CHECK_INCHES = 2;
export const LONG_MM = 200;

/** Height of the strip along the top of a page, mm: one line of small print over a check line. */
const STRIP_MM = 10;
/** Between check lines, and between other neighbours in the page's head, mm. */
const BETWEEN_MM = 5;
/** From the top of the strip down to its check lines, mm. */
const CHECK_DROP_MM = 7.5;
/** The title's height on the first page, mm. */
const TITLE_MM = 17;
/** What the long line takes on its side, mm: its ticks and its words. */
const LONG_WIDE_MM = 7;
/** The head's widest, mm: on large paper it stays a block in the corner. */
const HEAD_WIDEST_MM = 200;

/** The strip in a small block, for pages a piece fills from edge to edge: words above two check lines. */
export const BLOCK = { width: 56, height: 27 } as const;

/** How far down a page the strip reaches, mm. */
export const STRIP_REACH_MM = STRIP_MM + 2;

export function stripAcross(area: Area): Strip {
  const y = area.y + CHECK_DROP_MM;
  const end = Math.min(area.x + area.width, area.x + HEAD_WIDEST_MM) - 1;
  const inches = level(end - CHECK_INCHES * MM_PER_INCH, y, CHECK_INCHES * MM_PER_INCH);
  const millimetres = level(inches.from.x - BETWEEN_MM - 1 - CHECK_MM, y, CHECK_MM);
  const words = { x: area.x, y: area.y, width: millimetres.from.x - BETWEEN_MM - area.x, height: STRIP_MM };
  return { words, millimetres, inches };
}

export function stripBlock(x: Mm, y: Mm): Strip {
  return {
    words: { x, y, width: BLOCK.width, height: 9 },
    millimetres: level(x + 2, y + 16, CHECK_MM),
    inches: level(x + 2, y + 25, CHECK_INCHES * MM_PER_INCH),
  };
}

/** The first page's head without its map, the box for the map, and the box all of it takes. */
export type Head = {
  readonly cover: Omit<Cover, 'map'>;
  readonly aside: Box;
  readonly mapBox: Box;
  readonly box: Box;
};

/** Beside card and square lies the map; where pages join, words on joining do, and the map has a band of its own below. */
export function headOf(area: Area, pages: readonly Mapped[]): Head {
  const width = Math.min(area.width - LONG_WIDE_MM - 1, HEAD_WIDEST_MM);
  const y = area.y + TITLE_MM + BETWEEN_MM;
  const card = { x: area.x, y, width: BANK_CARD_MM.width, height: BANK_CARD_MM.height };
  const square = { x: card.x + card.width + BETWEEN_MM, y, width: CHECK_MM, height: CHECK_MM };
  const asideX = square.x + square.width + BETWEEN_MM;
  const aside = { x: asideX, y, width: area.x + width - asideX, height: card.height };
  const title = { x: area.x, y: area.y, width: stripAcross(area).words.width, height: TITLE_MM };
  const height = TITLE_MM + BETWEEN_MM + card.height;
  const box = { x: area.x, y: area.y, width, height };
  const cover = { width, title, card, square };
  if (!pages.some((page) => page.tile)) return { cover, aside, mapBox: aside, box };
  const below = { x: area.x, y: box.y + height + BETWEEN_MM, width };
  const band = { ...below, height: mapBandHeight(pages, { ...below, height: Infinity }) };
  return {
    cover: { ...cover, joining: aside },
    aside,
    mapBox: band,
    box: { ...box, height: height + BETWEEN_MM + band.height },
  };
}

/** Room for the long line: `upright` or not, its ticks and words on its left as it runs up, above it as it runs across. */
export const LONG_ROOM = {
  upright: { width: LONG_WIDE_MM, height: LONG_MM + 1 },
  level: { width: LONG_MM + 1, height: LONG_WIDE_MM },
} as const;

/** Where it usually lies: beside the head and under the strip, upright; level where paper is so wide that it costs no length. */
export function longBox(area: Area, { width }: Box): Box {
  const y = area.y + STRIP_REACH_MM;
  const level = area.width >= width + LONG_ROOM.level.width + 2 * BETWEEN_MM;
  const x = area.x + width + (level ? BETWEEN_MM : 0);
  return { x, y, ...LONG_ROOM[level ? 'level' : 'upright'] };
}

/** The line in such a room. */
export function longIn({ x, y, width, height }: Box): CheckLine {
  if (width > height) return level(x + 0.5, y + height - 0.5, LONG_MM);
  const right = x + width - 0.5;
  return { from: { x: right, y: y + height - 0.5 }, to: { x: right, y: y + height - 0.5 - LONG_MM } };
}

function level(x: Mm, y: Mm, length: Mm): CheckLine {
  return { from: { x, y }, to: { x: x + length, y } };
}
