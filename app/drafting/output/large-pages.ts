// Large print: what patterns else carry among their pieces, on pages of words before them.

import { BANK_CARD_MM, type Mm } from '../../body';
import type { Draft } from '../draft-types';
import { ownerOf } from '../outfit';
import { howMany } from '../pieces/how-many';
import { CHECK_MM, LONG_MM } from '../sheets/furniture';
import type { Layout } from '../sheets/layout';
import { mapWithin } from '../sheets/map';
import { allowancesOf } from '../told';
import { outline } from './closed';
import { mapInk, titleWords } from './cover-ink';
import { letteredOf } from './edge-letters';
import { type Paragraph, setIn, wordsOf } from './flow';
import { printing, roundedBox, wrong } from './furniture-ink';
import { type Ink, smallestOf, stroke } from './ink';
import { keyInk } from './key-ink';
import { numbered } from './label';
import type { Lettering } from './lettering';
import { magnified, magnifiedBy, usualWidth } from './magnified';
import { care, told } from './notes-ink';
import { checkInk } from './strip-ink';
import { type Block, roomIn, wordPages } from './word-pages';

type Size = { readonly width: Mm; readonly height: Mm };

/** The long line stands upright at the right of the first page; words keep off it. */
const LONG_ROOM_MM = 16;
const LONG_OFF_MM = 10;
/** Between the card's outline and the square, and under them, mm. */
const APART_MM = 8;
/** From the square down to its words, mm. */
const WORDS_DOWN_MM = 1.5;
/** A row of the key before it is magnified, mm: three lines of words. */
const KEY_ROW_MM = 9.8;
/** The map: as much of a page as it may take, mm. */
const MAP_MM = 120;

/** How to print and check, the key, and everything about each piece: numbers and letters are those on the pieces. */
export function largeInk(draft: Draft, layout: Layout, page: Size, lettering: Lettering): readonly (readonly Ink[])[] {
  const { say, units, widthOf } = lettering;
  const title = (code: string): Paragraph => ({ text: say(code), bold: true, before: 6 });
  const joins = layout.pages.some(({ tile }) => tile);
  const parts: readonly (Paragraph | Block)[] = [
    ...titleWords(draft, layout, say),
    ...printing(say).map((each) => ({ ...each, large: 1 })),
    checksBlock(page, lettering),
    ...wrong(say).map((each) => ({ ...each, before: 3 })),
    ...(joins
      ? [title('print.joining-title'), { text: say('print.joining') }, mapBlock(draft, layout, page, lettering)]
      : []),
    keyBlock(layout, page, lettering),
    title('print.list.cut'),
    ...draft.pieces.flatMap((piece, at): readonly Paragraph[] => [
      { text: numbered(piece, at, say), bold: true, before: 4 },
      ...(draft.outfit ? [{ text: say(`garment.${ownerOf(draft, at).order.garment}.name`) }] : []),
      {
        text: howMany(
          piece,
          layout.pages.some(({ placed }) => placed.some((each) => each.piece === at && each.whole)),
          say,
        ),
      },
      { text: allowancesOf(piece, layout.form, units, say) },
      ...letteredOf(piece, say, units).map(({ letter, text }) => ({
        text: say('list.named', { name: letter, what: text }),
      })),
    ]),
    ...told(draft, say, units).map(spaced),
    ...care(say, units).map(spaced),
  ];
  const { pages } = wordPages(parts, page, smallestOf(widthOf), widthOf, LONG_ROOM_MM);
  return pages.map((ink, index) => (index === 0 ? [...ink, ...longInk(page, lettering)] : ink));
}

/** Titles need more air where words are large. */
const spaced = (paragraph: Paragraph): Paragraph => (paragraph.bold ? { ...paragraph, before: 6 } : paragraph);

function longInk(page: Size, { say, widthOf }: Lettering): readonly Ink[] {
  const room = roomIn(page);
  const x = page.width - LONG_OFF_MM;
  const line = { from: { x, y: room.y + LONG_MM + 2 }, to: { x, y: room.y + 2 } };
  return checkInk(line, LONG_MM / 10, 2, say('print.check-long', { length: LONG_MM }), widthOf);
}

/** A card's outline and the square beside it, at true size. */
function checksBlock(page: Size, { say, widthOf }: Lettering): Block {
  const { width, height, corner } = BANK_CARD_MM;
  const measure = { text: say('print.square', { side: CHECK_MM, unit: 'cm' }), bold: true };
  const words = setIn([measure], smallestOf(widthOf), CHECK_MM, widthOf);
  return {
    height: Math.max(height, CHECK_MM + WORDS_DOWN_MM + words.height) + APART_MM,
    before: 2,
    draw: ({ x, y }) => {
      const [start, step] = widthOf.direction === 'rtl' ? [x + roomIn(page).width - LONG_ROOM_MM, -1] : [x, 1];
      const left = (from: Mm, wide: Mm) => start + step * from - (step < 0 ? wide : 0);
      const square = { x: left(width + APART_MM, CHECK_MM), y, width: CHECK_MM, height: CHECK_MM };
      return [
        stroke('marks', 'rule', roundedBox({ x: left(0, width), y, width, height }, corner), true),
        ...outline(square),
        ...wordsOf(words, { ...square, y: y + CHECK_MM + WORDS_DOWN_MM }, 'words'),
      ];
    },
  };
}

function keyBlock({ form }: Layout, page: Size, lettering: Lettering): Block {
  const by = magnifiedBy(lettering.widthOf);
  const small = { x: 0, y: 0, width: (roomIn(page).width - LONG_ROOM_MM) / by, height: 6 * KEY_ROW_MM };
  return {
    height: small.height * by,
    before: 4,
    draw: (at) => magnified(keyInk(small, form, { ...lettering, widthOf: usualWidth(lettering.widthOf) }), by, at),
  };
}

/** The pages small, as they join. */
function mapBlock(draft: Draft, layout: Layout, page: Size, { widthOf }: Lettering): Block {
  const by = magnifiedBy(widthOf);
  const room = { x: 0, y: 0, width: (roomIn(page).width - LONG_ROOM_MM) / by, height: MAP_MM / by };
  const cells = mapWithin(layout.pages, room);
  const high = Math.max(0, ...cells.map(({ box }) => box.y + box.height));
  return {
    height: high * by + APART_MM,
    before: 3,
    draw: (at) =>
      magnified(
        cells.flatMap((cell) => mapInk(draft, layout, cell, usualWidth(widthOf))),
        by,
        at,
      ),
  };
}
