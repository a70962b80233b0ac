import { expect, test } from 'vitest';
import { furnitureInk } from '../../app/drafting/output/furniture-ink';
import { keyInk } from '../../app/drafting/output/key-ink';
import { careInk } from '../../app/drafting/output/notes-ink';
import { squareIn } from '../../app/drafting/sheets/furniture';
import { CARD, WRONG } from '../../app/drafting/sheets/loose';
import { careSizes, keyHeight } from '../../app/drafting/sheets/notes';
import { createSay, locales } from '../../app/words';
import { printedWidth, wordsOver } from './words-over';

/** How wide the key is set, alone and under other words. */
const WIDTHS_MM = [74, 78, 96, 120, 156, 160, 190];
/** What the key explains, a line each. */
const LINES = 6;
/** Words keep this from a card's outline at least, mm. */
const APART_MM = 1;
/** Between a page's edge and what printers reach, mm. */
const EDGE_MM = 3;

test.each(locales)('nothing stands in the square in a card, and all words round it have room (%s)', async (locale) => {
  const lettering = { say: await createSay(locale), units: 'cm' as const, widthOf: await printedWidth(locale) };
  const boxOf = ({ width, height }: { readonly width: number; readonly height: number }) => {
    return { x: EDGE_MM, y: EDGE_MM, width, height };
  };
  for (const card of CARD.map(boxOf)) {
    const square = squareIn(card);
    const ink = furnitureInk({ card, square }, lettering);
    const words = ink.flatMap((each) => (each.kind === 'words' ? [each.at] : []));
    const lowest = Math.max(...words.map(({ y }) => y));
    expect(card.y + card.height - lowest, 'from the lowest line of words to the outline').toBeGreaterThan(APART_MM);
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

test.each(locales)('each line of the key has room in every size (%s)', async (locale) => {
  const lettering = { say: await createSay(locale), units: 'cm' as const, widthOf: await printedWidth(locale) };
  for (const width of WIDTHS_MM) {
    const size = { width, height: keyHeight(width) };
    const ink = keyInk({ x: EDGE_MM, y: EDGE_MM, ...size }, 'cut', lettering);
    expect(wordsOver(ink, lettering.widthOf, pageOf(size)), `${size.width}`).toEqual([]);
    expect(ink.filter(({ kind }) => kind === 'words').map((each) => 'text' in each && each.text)).toHaveLength(LINES);
  }
});

test.each(locales)('the words on care have room in every size they may have (%s)', async (locale) => {
  const lettering = { say: await createSay(locale), units: 'cm' as const, widthOf: await printedWidth(locale) };
  for (const size of careSizes) {
    const ink = careInk({ x: EDGE_MM, y: EDGE_MM, ...size }, lettering);
    expect(ink.length).toBeGreaterThan(2);
    expect(wordsOver(ink, lettering.widthOf, pageOf(size)), `${size.width}`).toEqual([]);
  }
});

const pageOf = ({ width, height }: { readonly width: number; readonly height: number }) => {
  return { width: width + 2 * EDGE_MM, height: height + 2 * EDGE_MM };
};
