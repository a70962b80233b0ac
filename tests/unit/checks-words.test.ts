import { expect, test } from 'vitest';
import { furnitureInk } from '../../app/drafting/output/furniture-ink';
import { CHECKS_ROOM, checksIn } from '../../app/drafting/sheets/furniture';
import { createSay, locales } from '../../app/words';
import { realWidth, wordsOver } from './words-over';

/** Between a page's edge and what printers reach, mm. */
const EDGE_MM = 3;

test.each(locales)('nothing stands in the square in a card, and all words round it have room (%s)', async (locale) => {
  const lettering = { say: await createSay(locale), units: 'cm' as const, widthOf: realWidth() };
  for (const room of CHECKS_ROOM) {
    const { square, ...rest } = checksIn({ x: EDGE_MM, y: EDGE_MM, ...room });
    const ink = furnitureInk({ square, ...rest }, lettering);
    const words = ink.flatMap((each) => (each.kind === 'words' ? [each.at] : []));
    expect(words.length).toBeGreaterThan(5);
    for (const { x, y } of words) {
      expect(x > square.x + square.width || y > square.y + square.height, `${x} ${y}`).toBe(true);
    }
    const page = { width: room.width + 2 * EDGE_MM, height: room.height + 2 * EDGE_MM };
    expect(wordsOver(ink, lettering.widthOf, page)).toEqual([]);
  }
});
