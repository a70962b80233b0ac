import type { Say } from '../../body';
import { line, type Point } from '../geometry';
import { type Board, type Box, nearestRoom } from '../packing';
import type { Tile } from '../sheets/layout';
import { OVERLAP_MM } from '../sheets/tiles';
import { withInk } from './boards';
import { setIn, wordsOf } from './flow';
import { type Ink, smallestOf, stroke, type TextWidth } from './ink';

/** Half the length of a cross's strokes, mm. */
const CROSS_MM = 3.5;

/** Which way each join lies. The pages on the left and above stay as they are; this page is cut and laid over them. */
const sides = ['left', 'up', 'right', 'down'] as const;

/**
 * Crosses that must meet, the dotted lines to cut along, and what goes where: in the overlaps, clear of the lines
 * that `taken` holds.
 */
export function tileInk(tile: Tile, taken: Board, say: Say, widthOf: TextWidth): readonly Ink[] {
  const crosses = tile.crosses.flatMap(crossInk);
  const free = withInk(taken, crosses, widthOf);
  return [
    ...crosses,
    ...sides.flatMap((side): readonly Ink[] => {
      const name = tile.joins[side];
      if (name === undefined) return [];
      const over = side === 'left' || side === 'up';
      const full = over ? say('print.trim', { page: name }) : say('print.joins', { page: name });
      const words = note([full, name], side, tile, free, widthOf);
      return over ? [stroke('marks', 'trim', [trimLine(side, tile.window)]), ...words] : words;
    }),
  ];
}

/** Two strokes that must meet those of the pages beside. */
export function crossInk({ x, y }: Point): readonly Ink[] {
  return [
    stroke('marks', 'rule', [line({ x: x - CROSS_MM, y }, { x: x + CROSS_MM, y })]),
    stroke('marks', 'rule', [line({ x, y: y - CROSS_MM }, { x, y: y + CROSS_MM })]),
  ];
}

function trimLine(side: 'left' | 'up', { x, y, width, height }: Box): ReturnType<typeof line> {
  return side === 'left' ? line({ x, y }, { x, y: y + height }) : line({ x, y }, { x: x + width, y });
}

/** The first of the texts that finds room in the overlap, nearest to its middle. */
function note(
  texts: readonly string[],
  side: (typeof sides)[number],
  { window }: Tile,
  taken: Board,
  widthOf: TextWidth,
): readonly Ink[] {
  const { x, y, width, height } = window;
  const inset = OVERLAP_MM / 2;
  const upright = side === 'left' || side === 'right';
  const wish = {
    x: side === 'left' ? x + inset : side === 'right' ? x + width - inset : x + width / 2,
    y: side === 'up' ? y + inset : side === 'down' ? y + height - inset : y + height / 2,
  };
  for (const text of texts) {
    const set = setIn([{ text }], smallestOf(widthOf), Infinity, widthOf);
    const size = upright ? { width: set.height, height: set.width } : { width: set.width, height: set.height };
    const place = nearestRoom(taken, size.width, size.height, wish);
    const off = place && (upright ? place.x + size.width / 2 - wish.x : place.y + size.height / 2 - wish.y);
    if (place && off !== undefined && Math.abs(off) <= inset - size[upright ? 'width' : 'height'] / 2) {
      return wordsOf(set, { ...place, ...size }, 'words', upright ? 'up' : 0);
    }
  }
  return [];
}
