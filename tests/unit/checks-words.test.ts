import { expect, test } from 'vitest';
import { furnitureInk } from '../../app/drafting/output/furniture-ink';
import { squareIn } from '../../app/drafting/sheets/furniture';
import { CARD, WRONG } from '../../app/drafting/sheets/loose';
import { createSay, locales } from '../../app/words';
import { realWidth, wordsOver } from './words-over';

/** Between a page's edge and what printers reach, mm. */
const EDGE_MM = 3;

test.each(locales)('nothing stands in the square in a card, and all words round it have room (%s)', async (locale) => {
  const lettering = { say: await createSay(locale), units: 'cm' as const, widthOf: realWidth() };
  const boxOf = ({ width, height }: { readonly width: number; readonly height: number }) => {
    return { x: EDGE_MM, y: EDGE_MM, width, height };
  };
  for (const card of CARD.map(boxOf)) {
    const square = squareIn(card);
    const ink = furnitureInk({ card, square }, lettering);
    const words = ink.flatMap((each) => (each.kind === 'words' ? [each.at] : []));
    expect(words.length).toBeGreaterThan(5);
    for (const { x, y } of words) {
      expect(x > square.x + square.width || y > square.y + square.height, `${x} ${y}`).toBe(true);
    }
    expect(wordsOver(ink, lettering.widthOf, pageOf(card))).toEqual([]);
  }
  for (const wrong of WRONG.map(boxOf)) {
    expect(wordsOver(furnitureInk({ wrong }, lettering), lettering.widthOf, pageOf(wrong))).toEqual([]);
  }
});

const pageOf = ({ width, height }: { readonly width: number; readonly height: number }) => {
  return { width: width + 2 * EDGE_MM, height: height + 2 * EDGE_MM };
};
