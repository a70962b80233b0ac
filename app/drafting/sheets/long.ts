import { type Box, blockBox, nearestRoom } from '../packing';
import type { Area } from './area';
import { LONG_ROOM, longBox } from './furniture';
import type { WithNotes } from './notes';

/** Kept between the long line and what lies beside it, mm. */
const CLEAR_MM = 2;

/** The sheets, and where the long check line lies: on which of them, and in which box of its page. */
export type WithLong = { readonly noted: WithNotes; readonly long: { readonly index: number; readonly box: Box } };

/**
 * Sheets with the long check line in its usual place on the first page; where that costs a page, on the earliest page that
 * has room for it as it is; only where none has, at that cost. `lay` fills the sheets round boxes of the first page.
 */
export function withLong(area: Area, head: Box, lay: (boxes: readonly Box[]) => WithNotes): WithLong {
  const usual = longBox(area, head);
  const noted = lay([head, usual]);
  if (noted.sheets.length > 1) {
    const without = lay([head]);
    const found = without.sheets.length < noted.sheets.length ? roomIn(without, area) : undefined;
    if (found) return { noted: without, long: found };
  }
  return { noted, long: { index: 0, box: usual } };
}

function roomIn({ sheets, index: notes, box: words }: WithNotes, area: Area): WithLong['long'] | undefined {
  for (const [index, { kind, board }] of sheets.entries()) {
    if (kind === 'bare') continue;
    const free = index === notes ? blockBox(board, words, CLEAR_MM) : board;
    for (const room of Object.values(LONG_ROOM)) {
      const [width, height] = [room.width + 2 * CLEAR_MM, room.height + 2 * CLEAR_MM];
      if (width > board.width || height > board.height) continue;
      const place = nearestRoom(free, width, height, { x: board.width / 2, y: board.height / 2 });
      if (place) return { index, box: { x: place.x + CLEAR_MM + area.x, y: place.y + CLEAR_MM + area.y, ...room } };
    }
  }
  return undefined;
}
