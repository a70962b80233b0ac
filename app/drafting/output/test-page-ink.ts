// A page to print before the pattern: whether the printer keeps lengths, both ways, and what it crops.

import { BANK_CARD_MM, type Mm, type Say } from '../../body';
import { type Path, polyline } from '../geometry';
import { cornersOf } from '../pieces/outline';
import { BOTTOM_MARGIN_MM, EDGE_MARGIN_MM } from '../sheets/area';
import { CHECK_INCHES, CHECK_MM, LONG_MM, largeBlock, stripBlock } from '../sheets/furniture';
import type { CheckLine } from '../sheets/layout';
import { type Paragraph, setIn, setWithin, wordsOf } from './flow';
import { roundedBox } from './furniture-ink';
import { type Ink, sizesOf, smallestOf, stroke, type TextWidth } from './ink';
import { checkInk } from './strip-ink';
import { wordPages } from './word-pages';

/** From the edge of the page, mm. */
const LEFT_MM = 30;
const TOP_MM = 20;
const TEXT_PT = 11;
/** How long the marks in the corners are, mm. */
const CORNER_MM = 10;
/** Across the page as much as the narrowest paper takes, mm. */
const ACROSS_MM = 150;

type Size = { readonly width: number; readonly height: number };

/** Lines up and across, a card's outline, corners of what the pattern uses, and what to do with them. */
export function testPageInk(page: Size, say: Say, widthOf: TextWidth): readonly Ink[] {
  const box = { x: LEFT_MM + 8, y: TOP_MM, width: page.width - LEFT_MM - 30, height: 0 };
  const words = setIn(testWords(say), TEXT_PT, box.width, widthOf);
  return [...wordsOf(words, box, 'words'), ...linesInk(page, TOP_MM + words.height + 10, say, widthOf)];
}

/** In large print the lines have the first page to themselves, and what to do with them stands on the next. */
export function largeTestInk(page: Size, say: Say, widthOf: TextWidth): readonly (readonly Ink[])[] {
  const words = testWords(say).map(({ text, bold = false, before = 0 }) => ({ text, bold, before: 2 * before }));
  return [linesInk(page, TOP_MM, say, widthOf), ...wordPages(words, page, smallestOf(widthOf), widthOf).pages];
}

/** All that is measured; the card's outline lies so far down. */
function linesInk(page: Size, down: Mm, say: Say, widthOf: TextWidth): readonly Ink[] {
  const up: CheckLine = at(LEFT_MM - 8, TOP_MM + 10 + LONG_MM, 0, -LONG_MM);
  const across: CheckLine = at(LEFT_MM + 8, TOP_MM + 10 + LONG_MM, ACROSS_MM, 0);
  const card = { x: LEFT_MM + 8, y: down, width: BANK_CARD_MM.width, height: BANK_CARD_MM.height };
  const block = widthOf.print === 'large' ? largeBlock : stripBlock;
  const short = block(card.x, card.y + card.height + 8);
  const inside = { ...card, x: card.x + 5, y: card.y + 5, width: card.width - 10, height: card.height - 10 };
  return [
    ...checkInk(up, LONG_MM / 10, 2, say('print.check-long', { length: LONG_MM }), widthOf),
    ...checkInk(across, ACROSS_MM / 10, 2, say('print.check-long', { length: ACROSS_MM }), widthOf),
    stroke('marks', 'rule', roundedBox(card, BANK_CARD_MM.corner), true),
    ...wordsOf(setWithin([{ text: say('print.card') }], inside, sizesOf([9], widthOf), widthOf), inside, 'words'),
    ...checkInk(short.millimetres, CHECK_MM / 10, 2, say('print.check-mm', { length: CHECK_MM }), widthOf),
    ...checkInk(short.inches, CHECK_INCHES, 4, say('print.check-in', { length: CHECK_INCHES }), widthOf),
    ...cornersIn(page).map((path) => stroke('marks', 'mark', path)),
  ];
}

/** What the page is for, and what to do with it. */
export const testWords = (say: Say): readonly Paragraph[] => [
  { text: say('print.test.title'), bold: true, large: 1.6 },
  ...['print', 'measure', 'wrong', 'corners'].map((code) => ({
    text: say(`print.test.${code}`, { up: LONG_MM, across: ACROSS_MM }),
    before: 2,
  })),
];

function at(x: number, y: number, right: number, down: number): CheckLine {
  return { from: { x, y }, to: { x: x + right, y: y + down } };
}

/** A mark in each corner of what the pattern uses of the paper. */
function cornersIn({ width, height }: Size): readonly Path[] {
  const used = {
    x: EDGE_MARGIN_MM,
    y: EDGE_MARGIN_MM,
    width: width - 2 * EDGE_MARGIN_MM,
    height: height - EDGE_MARGIN_MM - BOTTOM_MARGIN_MM,
  };
  const [x, y] = [used.x + used.width / 2, used.y + used.height / 2];
  return cornersOf(used).map((corner) =>
    polyline([
      { x: corner.x + Math.sign(x - corner.x) * CORNER_MM, y: corner.y },
      corner,
      { x: corner.x, y: corner.y + Math.sign(y - corner.y) * CORNER_MM },
    ]),
  );
}
