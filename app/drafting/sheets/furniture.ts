// What pages carry beside pieces, and where: the strip with its check lines, and the first page's head.

import { BANK_CARD_MM, MM_PER_INCH, type Mm } from '../../body';
import type { Box } from '../packing';
import type { Area } from './area';
import type { CheckLine, Cover, Strip } from './layout';
import { type Mapped, mapBandHeight, mapLeastHeight } from './map';

type Size = Pick<Box, 'width' | 'height'>;

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
/** How far under it the stitches run, mm. */
export const STITCHES_MM = 2;
/** What the long line takes on its side, mm: its ticks and its words. */
const LONG_WIDE_MM = 7;
/** The head's widest, mm: on large paper it stays a block in the corner. */
const HEAD_WIDEST_MM = 200;

/** In large print: two lines of words over the whole page, and the check lines below them, each with its words above it. */
const LARGE = { words: 17, drop: 31, strip: 34, row: 15, line: 9 } as const;

/** The strip in a small block, for pages a piece fills from edge to edge: words above two check lines. */
const BLOCK = { width: 56, height: 27 } as const;
const LARGE_BLOCK = { width: 58, height: LARGE.line + 2 * LARGE.row } as const;

export const blockOf = ({ print }: Area) => (print === 'large' ? LARGE_BLOCK : BLOCK);

/** How far down a page the strip reaches, mm. */
const STRIP_REACH_MM = STRIP_MM + 2;

export const stripReach = ({ print }: Area): Mm => (print === 'large' ? LARGE.strip : STRIP_REACH_MM);

export function stripAcross(area: Area): Strip {
  const large = area.print === 'large';
  const y = area.y + (large ? LARGE.drop : CHECK_DROP_MM);
  const end = Math.min(area.x + area.width, area.x + HEAD_WIDEST_MM) - 1;
  const inches = level(end - CHECK_INCHES * MM_PER_INCH, y, CHECK_INCHES * MM_PER_INCH);
  const millimetres = level(inches.from.x - BETWEEN_MM - 1 - CHECK_MM, y, CHECK_MM);
  const beside = millimetres.from.x - BETWEEN_MM - area.x;
  const words = {
    x: area.x,
    y: area.y,
    ...(large ? { width: end - area.x, height: LARGE.words } : { width: beside, height: STRIP_MM }),
  };
  return { words, millimetres, inches };
}

export function stripBlock(x: Mm, y: Mm): Strip {
  return {
    words: { x, y, width: BLOCK.width, height: 9 },
    millimetres: level(x + 2, y + 16, CHECK_MM),
    inches: level(x + 2, y + 25, CHECK_INCHES * MM_PER_INCH),
  };
}

/** The same in large print: one line of words. */
export function largeBlock(x: Mm, y: Mm): Strip {
  return {
    words: { x, y, width: LARGE_BLOCK.width, height: LARGE.line },
    millimetres: level(x + 3, y + LARGE.line + LARGE.row - 1, CHECK_MM),
    inches: level(x + 3, y + LARGE.line + 2 * LARGE.row - 1, CHECK_INCHES * MM_PER_INCH),
  };
}

/** What the first page begins with: its cover, the box for the map, the boxes it takes, and places in it for other furniture. */
export type Head = {
  readonly cover: Omit<Cover, 'map'>;
  readonly mapBox: Box;
  readonly box: Box;
  readonly places: Readonly<Partial<Record<'card' | 'square' | 'aside' | 'long', Box>>>;
};

/** Beside card and square lies the map, or aside from it words; where pages join, the map has a band of its own below. */
export function wholeHead(area: Area, pages: readonly Mapped[]): Head {
  const width = Math.min(area.width - LONG_WIDE_MM - 1, HEAD_WIDEST_MM);
  const y = area.y + TITLE_MM + BETWEEN_MM;
  const card = { x: area.x, y, width: BANK_CARD_MM.width, height: BANK_CARD_MM.height };
  const square = { x: card.x + card.width + BETWEEN_MM, y, ...SQUARE_ROOM };
  const asideX = square.x + square.width + BETWEEN_MM;
  const aside = { x: asideX, y, width: area.x + width - asideX, height: card.height };
  const cover = { width, title: titleBox(area) };
  const height = TITLE_MM + BETWEEN_MM + card.height;
  const box = { x: area.x, y: area.y, width, height };
  const places = { card, square, aside, long: longBox(area, width) };
  if (!pages.some((page) => page.tile)) return { cover, mapBox: aside, box, places };
  const below = { x: area.x, y: box.y + height + BETWEEN_MM, width };
  const band = { ...below, height: mapBandHeight(pages, below) };
  return { cover, mapBox: band, box: { ...box, height: height + BETWEEN_MM + band.height }, places };
}

/** Title and map alone, the map beside the title or below it, whichever takes less; the rest of the furniture goes elsewhere. */
export function shortHead(area: Area, pages: readonly Mapped[]): Head {
  const width = Math.min(area.width, HEAD_WIDEST_MM);
  const title = titleBox(area);
  const alone = TITLE_MM + STITCHES_MM;
  const x = title.x + title.width + BETWEEN_MM;
  const spots = [
    { x, y: area.y + STRIP_REACH_MM, width: area.x + width - x },
    { x: area.x, y: area.y + alone + 1, width },
  ].map((spot) => ({ ...spot, height: pages.length > 1 ? mapLeastHeight(pages, spot) : 0 }));
  const mapBox = spots.reduce((low, spot) => (spot.y + spot.height < low.y + low.height ? spot : low));
  const height = Math.max(alone, mapBox.y + mapBox.height - area.y);
  const cover = { width: mapBox.x > area.x ? title.width : width, title };
  return { cover, mapBox, box: { x: area.x, y: area.y, width, height }, places: {} };
}

function titleBox(area: Area): Box {
  return { x: area.x, y: area.y, width: stripAcross(area).words.width, height: TITLE_MM };
}

/** Room for title and stitches where they have no head to stand in, wide or narrow. */
export const TITLE_ROOM = [
  { width: 81, height: TITLE_MM + STITCHES_MM },
  { width: 56, height: 28 },
] as const;

/** Room for the two check lines alone: one below the other, one after the other; and both upright, running up. */
const STACKED = { width: BLOCK.width, height: 18 } as const;
const IN_A_ROW = { width: 109, height: 9 } as const;
export const STRIP_ROOM = [STACKED, IN_A_ROW, uprighted(STACKED), uprighted(IN_A_ROW)] as const;

function uprighted({ width, height }: Size): Size {
  return { width: height, height: width };
}

/** The strip in such a room, without words: each line has its words on its left as it runs. */
export function stripIn(box: Box): Strip {
  const { x, y, width, height } = box;
  const isUpright = height > width;
  const along = Math.max(width, height) > STACKED.width ? CHECK_MM + 4 : 0;
  const aside = along > 0 ? 0 : 9;
  const line = (from: Mm, down: Mm, length: Mm): CheckLine =>
    isUpright ? upright(x + down, y + height - from, length) : level(x + from, y + down, length);
  return {
    words: box,
    millimetres: line(2, 7, CHECK_MM),
    inches: line(2 + along, 7 + aside, CHECK_INCHES * MM_PER_INCH),
  };
}

/** A first page's head where its title and map lie free. */
export function freeHead(title: Box, map: Box | undefined): Head {
  const words = { ...title, height: title.height - STITCHES_MM };
  return {
    cover: { width: title.width, title: words },
    mapBox: map ?? title,
    box: { ...title, height: 0 },
    places: {},
  };
}

/** What the square's words take below it, mm. */
export const SQUARE_WORDS_MM = 4;

/** The square, with its words below. */
export const SQUARE_ROOM = { width: CHECK_MM, height: CHECK_MM + SQUARE_WORDS_MM } as const;

/** The square within a card's outline, left or at its top, as far from three of its sides. */
export function squareIn({ x, y, width, height }: Box): Box {
  const inset = (Math.min(width, height) - CHECK_MM) / 2;
  return { x: x + inset, y: y + inset, width: CHECK_MM, height: CHECK_MM };
}

/** Room for the long line: `upright` or not, its ticks and words on its left as it runs up, above it as it runs across. */
export const LONG_ROOM = {
  upright: { width: LONG_WIDE_MM, height: LONG_MM + 1 },
  level: { width: LONG_MM + 1, height: LONG_WIDE_MM },
} as const;

/** Where it usually lies: beside the head and under the strip, upright; level where paper is so wide that it costs no length. */
function longBox(area: Area, head: Mm): Box {
  const y = area.y + STRIP_REACH_MM;
  const level = area.width >= head + LONG_ROOM.level.width + 2 * BETWEEN_MM;
  const x = area.x + head + (level ? BETWEEN_MM : 0);
  return { x, y, ...LONG_ROOM[level ? 'level' : 'upright'] };
}

/** The line in such a room. */
export function longIn({ x, y, width, height }: Box): CheckLine {
  if (width > height) return level(x + 0.5, y + height - 0.5, LONG_MM);
  const right = x + width - 0.5;
  return { from: { x: right, y: y + height - 0.5 }, to: { x: right, y: y + height - 0.5 - LONG_MM } };
}

function upright(x: Mm, y: Mm, length: Mm): CheckLine {
  return { from: { x, y }, to: { x, y: y - length } };
}

function level(x: Mm, y: Mm, length: Mm): CheckLine {
  return { from: { x, y }, to: { x: x + length, y } };
}
