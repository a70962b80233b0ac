import type { Say } from '../../body';
import type { Draft } from '../draft-types';
import { add, left, lerp, line, scale, subtract, unit } from '../geometry';
import type { Box } from '../packing';
import { CHECK_INCHES, CHECK_MM, LONG_MM } from '../sheets/furniture';
import type { CheckLine, Layout, Page } from '../sheets/layout';
import { centred, type Paragraph, type Setting, setIn, setWithin, wordsOf } from './flow';
import { type Ink, pensOf, SMALLEST_PT, smallestOf, stroke, type TextWidth } from './ink';
import { madeFor } from './label';

/** Ticks of the check lines, mm: at the ends, at whole steps, at parts of steps; and from there to the middle of the words. */
const TICKS_MM = {
  usual: { end: 2, whole: 1.4, part: 0.8, words: 2.2 },
  large: { end: 5, whole: 3.6, part: 2.2, words: 4.4 },
} as const;

/** What every page carries: whose pattern, which page, and two lines to measure. */
export function stripInk(draft: Draft, layout: Layout, page: Page, say: Say, widthOf: TextWidth): readonly Ink[] {
  const { strip } = page;
  const checks = [
    ...checkInk(strip.millimetres, CHECK_MM / 10, 2, say('print.check-mm', { length: CHECK_MM }), widthOf),
    ...checkInk(strip.inches, CHECK_INCHES, 4, say('print.check-in', { length: CHECK_INCHES }), widthOf),
    ...(page.long ? checkInk(page.long, LONG_MM / 10, 2, say('print.check-long', { length: LONG_MM }), widthOf) : []),
  ];
  if (page.cover) return checks;
  const number = { page: layout.pages.indexOf(page) + 1, pages: layout.pages.length };
  const { tile } = page;
  const piece = tile && draft.pieces[tile.piece];
  const about = say('print.page-line', { ...number, date: draft.order.date });
  const lines: readonly Paragraph[] = piece
    ? [
        {
          text: say('print.tile-title', { name: page.name, piece: say(`piece.${piece.name}`) }),
          bold: true,
          large: 1.35,
        },
        { text: say('list.beside', { one: madeFor(draft, say), two: about }) },
      ]
    : [{ text: madeFor(draft, say), bold: true, large: 1.35 }, { text: about }];
  return [
    ...wordsOf(setStrip(lines, say('screen.print.page', number), strip.words, widthOf), strip.words, 'words'),
    ...checks,
  ];
}

/** The strip's words; in large print all of one size, and where they have no room the page's number alone. */
function setStrip(lines: readonly Paragraph[], page: string, box: Box, widthOf: TextWidth): Setting {
  if (widthOf.print !== 'large') return setWithin(lines, box, [8, 7.5, SMALLEST_PT], widthOf);
  const set = setIn(
    lines.map((line) => ({ ...line, large: 1 })),
    smallestOf(widthOf),
    box.width,
    widthOf,
  );
  return set.height <= box.height ? set : setIn([{ text: page, bold: true }], smallestOf(widthOf), box.width, widthOf);
}

/** A line with ticks at its ends, at each of its `steps`, and `parts` to a step; its length written on its left as it runs. */
export function checkInk(
  { from, to }: CheckLine,
  steps: number,
  parts: number,
  words: string,
  widthOf: TextWidth,
): readonly Ink[] {
  const along = unit(subtract(to, from));
  const aside = left(along);
  const print = widthOf.print ?? 'usual';
  const sizes = TICKS_MM[print];
  // Wide ticks stand within the line, so that it is as long as it says from outside to outside.
  const inwards = print === 'large' ? pensOf.large.rule.width / 2 : 0;
  const ticks = Array.from({ length: steps * parts + 1 }, (_, i): Ink => {
    const isEnd = i % (steps * parts) === 0;
    const at = add(lerp(from, to, i / (steps * parts)), scale(along, isEnd ? (i === 0 ? inwards : -inwards) : 0));
    const reach = isEnd ? sizes.end : i % parts === 0 ? sizes.whole : sizes.part;
    return stroke('marks', 'rule', [line(at, add(at, scale(aside, reach)))]);
  });
  const beside = add(lerp(from, to, 0.5), scale(aside, sizes.end + sizes.words));
  const turn = Math.atan2(along.y, along.x);
  return [
    stroke('marks', 'rule', [line(from, to)]),
    ...ticks,
    centred(words, beside, smallestOf(widthOf), true, widthOf, turn),
  ];
}
