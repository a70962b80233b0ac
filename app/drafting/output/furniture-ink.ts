// Furniture of a page, wherever it lies: a card's outline with how to print in it, a square, words on joining pages.

import { BANK_CARD_MM, type Mm, type Say } from '../../body';
import { arc, line, type Path, type Point } from '../geometry';
import type { Box } from '../packing';
import { LONG_MM, SQUARE_WORDS_MM } from '../sheets/furniture';
import type { Furniture } from '../sheets/layout';
import { papers } from '../sheets/papers';
import { outline } from './closed';
import { centred, type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke } from './ink';
import type { Lettering } from './lettering';

/** Between an outline and the words in it, mm. */
const INSET_MM = 3;

/** Sizes of small print, points. */
const SMALL_PT = [9.5, 9, 8.5, 8, 7.5, SMALLEST_PT];

/** Words beside the square in the card keep this to its lines, mm. */
const BESIDE_MM = 2;
/** From the square down to the middle of its words, mm. */
const WORDS_DOWN_MM = 2;

type Boxed = (paragraphs: readonly Paragraph[], box: Box) => readonly Ink[];

export function furnitureInk(furniture: Furniture, { say, widthOf }: Lettering): readonly Ink[] {
  const { card, square, joining } = furniture;
  const boxed: Boxed = (paragraphs, box) => wordsOf(setWithin(paragraphs, box, SMALL_PT, widthOf), box, 'words');
  const isNested = card && square && isWithin(square, card);
  return [
    ...(card ? cardInk(card) : []),
    ...(square ? squareInk(square, hasRoomBelow(square, card), { say, widthOf }) : []),
    ...(isNested ? boxed(besideWords(card, square, say), besideSquare(card, square)) : []),
    ...(card && !isNested ? boxed([...printing(say), ...wrong(say)], inset(card)) : []),
    ...(furniture.wrong ? boxed(wrong(say), furniture.wrong) : []),
    ...(joining ? boxed(joiningWords(say), joining) : []),
  ];
}

function isWithin(one: Box, other: Box): boolean {
  const [right, bottom] = [other.x + other.width, other.y + other.height];
  return one.x >= other.x && one.x + one.width <= right && one.y >= other.y && one.y + one.height <= bottom;
}

const cardInk = (card: Box): readonly Ink[] => [stroke('marks', 'rule', roundedBox(card, BANK_CARD_MM.corner), true)];

/** Where a card with the square in it has room for words: beside the square, or where it is upright, below. */
function besideSquare(card: Box, { x, y, width, height }: Box): Box {
  const upright = isUpright(card);
  const from = upright ? y + height + SQUARE_WORDS_MM : BESIDE_MM + x + width;
  return upright
    ? { x, y: from, width, height: card.y + card.height - from - BESIDE_MM / 2 }
    : { x: from, y, width: card.x + card.width - from - BESIDE_MM, height };
}

/** A square with nothing in it, and its words below where they have room. */
function squareInk(square: Box, named: boolean, { say, widthOf }: Pick<Lettering, 'say' | 'widthOf'>): readonly Ink[] {
  const words = named ? [centred(sideWords(square, say), below(square), SMALLEST_PT, true, widthOf)] : [];
  return [...outline(square), ...words];
}

const sideWords = (square: Box, say: Say): string => say('print.square', { side: square.width, unit: 'cm' });

const isUpright = ({ width, height }: Box): boolean => height > width;

/** Under the square in a level card its words would touch the card's line: there they stand beside it. */
const hasRoomBelow = (square: Box, card: Box | undefined): boolean =>
  !card || !isWithin(square, card) || isUpright(card);

const besideWords = (card: Box, square: Box, say: Say): readonly Paragraph[] =>
  hasRoomBelow(square, card) ? printing(say) : [{ text: sideWords(square, say), bold: true }, ...printing(say)];

/** How to print. */
export function printing(say: Say): readonly Paragraph[] {
  return [
    { text: say('print.how-title'), bold: true, large: 1.3, before: 0.8 },
    { text: say('print.how') },
    { text: say('print.card'), before: 0.8 },
  ];
}

/** What to do when it is wrong. */
export function wrong(say: Say): readonly Paragraph[] {
  return [
    { text: say('print.wrong-title'), bold: true, before: 1.4 },
    {
      text: say('print.wrong', {
        long: LONG_MM,
        letter: fittedOn(papers.letter, papers.a4),
        a4: fittedOn(papers.a4, papers.letter),
      }),
    },
  ];
}

/** What remains of lengths where a page is fitted on another paper. */
const fittedOn = (page: Size, paper: Size): number => Math.min(paper.width / page.width, paper.height / page.height);

type Size = { readonly width: Mm; readonly height: Mm };

/** Under the square, where nothing lies in a ruler's way. */
function below({ x, y, width, height }: Box): Point {
  return { x: x + width / 2, y: y + height + WORDS_DOWN_MM };
}

function joiningWords(say: Say): readonly Paragraph[] {
  return [{ text: say('print.joining-title'), bold: true }, { text: say('print.joining') }];
}

/** A box with corners of radius r, clockwise from its upper left. */
export function roundedBox({ x, y, width, height }: Box, r: Mm): Path {
  const [right, bottom] = [x + width, y + height];
  const quarter = Math.PI / 2;
  return [
    line({ x: x + r, y }, { x: right - r, y }),
    ...arc({ x: right - r, y: y + r }, r, -quarter, 0),
    line({ x: right, y: y + r }, { x: right, y: bottom - r }),
    ...arc({ x: right - r, y: bottom - r }, r, 0, quarter),
    line({ x: right - r, y: bottom }, { x: x + r, y: bottom }),
    ...arc({ x: x + r, y: bottom - r }, r, quarter, 2 * quarter),
    line({ x, y: bottom - r }, { x, y: y + r }),
    ...arc({ x: x + r, y: y + r }, r, 2 * quarter, 3 * quarter),
  ];
}

function inset({ x, y, width, height }: Box): Box {
  return { x: x + INSET_MM, y: y + INSET_MM, width: width - 2 * INSET_MM, height: height - 2 * INSET_MM };
}
