import type { Say } from '../../body';
import type { Draft } from '../draft-types';
import { add, left, lerp, line, scale, subtract, unit } from '../geometry';
import { CHECK_INCHES, CHECK_MM, LONG_MM } from '../sheets/furniture';
import type { CheckLine, Layout, Page } from '../sheets/layout';
import { centred, type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';
import { madeFor } from './label';

/** Ticks of the check lines, mm: at the ends, at whole steps, at parts of steps. */
const TICKS_MM = { end: 2, whole: 1.4, part: 0.8 } as const;

/** From the ticks to the middle of the words, mm. */
const WORDS_MM = 2.2;

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
  const set = setWithin(lines, strip.words, [8, 7.5, SMALLEST_PT], widthOf);
  return [...wordsOf(set, strip.words, 'words'), ...checks];
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
  const ticks = Array.from({ length: steps * parts + 1 }, (_, i): Ink => {
    const at = lerp(from, to, i / (steps * parts));
    const reach = i % (steps * parts) === 0 ? TICKS_MM.end : i % parts === 0 ? TICKS_MM.whole : TICKS_MM.part;
    return stroke('marks', 'rule', [line(at, add(at, scale(aside, reach)))]);
  });
  const beside = add(lerp(from, to, 0.5), scale(aside, TICKS_MM.end + WORDS_MM));
  const turn = Math.atan2(along.y, along.x);
  return [
    stroke('marks', 'rule', [line(from, to)]),
    ...ticks,
    centred(words, beside, SMALLEST_PT, true, widthOf, turn),
  ];
}
