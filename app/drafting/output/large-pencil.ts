// One piece of the pencil plan in large print: the same drawing, numbers and sentences, over as many pages as they take.

import { inTurn, type Mm } from '../../body';
import type { Draft } from '../draft-types';
import { headWords, lineWords, type Mark, type PencilPiece, planTitle } from '../pencil';
import type { Paragraph } from './flow';
import { type Ink, MM_PER_PT, smallestOf, type Words } from './ink';
import type { Lettering } from './lettering';
import { magnified, magnifiedBy, usualWidth } from './magnified';
import { drawingInk, type Size } from './pencil-ink';
import { type Block, roomIn, wordPages } from './word-pages';

/** The drawing's height at most, and what is kept at its left for the word on the fold, mm. */
const DRAWN_HIGH_MM = 150;
const FOLD_WORD_MM = 5;
/** Numbers stand above and below it, mm. */
const NUMBERS_MM = 11;
const ROW_MM = 9.6;
/** Two points stand in a row; where the number, the way from the left and the way from the bottom end, as shares of its half. */
const BESIDE = 2;
const COLUMNS = [0.16, 0.54, 0.94] as const;

export function largePencilInk(
  draft: Draft,
  plan: PencilPiece,
  page: Size,
  lettering: Lettering,
): readonly (readonly Ink[])[] {
  const piece = draft.pieces[plan.piece];
  if (!piece) return [];
  const { say, units, widthOf } = lettering;
  const words = (text: string, before = 2): Paragraph => ({ text, before });
  const parts = [
    { text: say(`piece.${piece.name}`), bold: true, large: 1.3 },
    words(planTitle(draft, say), 0),
    ...headWords(plan, piece, say, units).map((text) => words(text)),
    words(say('pencil.how'), 4),
    drawingBlock(draft, plan, page, lettering),
    ...rowBlocks(plan.marks, page, lettering),
    ...plan.lines.map((line) => words(inTurn(lineWords(line, piece, say, units), say), 4)),
  ];
  return wordPages(parts, page, smallestOf(widthOf), widthOf).pages;
}

function drawingBlock(draft: Draft, plan: PencilPiece, page: Size, lettering: Lettering): Block {
  const by = magnifiedBy(lettering.widthOf);
  const width = roomIn(page).width / by - FOLD_WORD_MM;
  const room = { x: FOLD_WORD_MM, y: 0, width, height: DRAWN_HIGH_MM / by };
  const piece = draft.pieces[plan.piece];
  const usual = { ...lettering, widthOf: usualWidth(lettering.widthOf) };
  const { ink, bottom } = piece ? drawingInk(piece, plan, room, usual) : { ink: [], bottom: 0 };
  return {
    before: 2,
    height: bottom * by + 2 * NUMBERS_MM,
    draw: ({ x, y }) => magnified(ink, by, { x, y: y + NUMBERS_MM }),
  };
}

/** Under a heading, row by row; the second half of the points stands beside the first. */
function rowBlocks(marks: readonly Mark[], page: Size, { say, units, widthOf }: Lettering): readonly Block[] {
  const size = smallestOf(widthOf);
  const half = roomIn(page).width / BESIDE;
  const bare = (length: Mm) => say('pencil.bare', { length, unit: units });
  const count = Math.ceil(marks.length / BESIDE);
  const row = (cells: readonly (readonly string[])[], bold: (column: number) => boolean): Block => ({
    before: 0,
    height: ROW_MM,
    draw: ({ x, y }) =>
      cells.flatMap((texts, side) =>
        texts.map((text, column): Words => {
          const end = x + half * (side + (COLUMNS[column] ?? 1));
          const at = { x: end - widthOf(text, size, bold(column)), y: y + size * MM_PER_PT };
          return { kind: 'words', layer: 'words', turn: 0, size, bold: bold(column), text, at };
        }),
      ),
  });
  const heading = ['', say('pencil.from-left'), say('pencil.from-bottom')];
  return [
    row(marks.length > 1 ? [heading, heading] : [heading], () => true),
    ...Array.from({ length: count }, (_, at) => {
      const beside = [marks[at], marks[at + count]].flatMap((mark) =>
        mark ? [[String(mark.number), bare(mark.x), bare(mark.y)]] : [],
      );
      return row(beside, (column) => column === 0);
    }),
  ];
}
