// The first page's head: whose pattern it is, how to print it and prove it true, and all pages small.

import { BANK_CARD_MM, type Mm, type Say } from '../../body';
import type { Draft } from '../draft-types';
import { arc, line, type Path, type Point, polyline } from '../geometry';
import { garmentsIn } from '../outfit';
import type { Box } from '../packing';
import { cornersOf, outlineOf } from '../pieces/outline';
import { LONG_MM } from '../sheets/furniture';
import type { Cover, Layout, MapCell, Page } from '../sheets/layout';
import { moved } from '../sheets/move';
import { papers } from '../sheets/papers';
import { clippedPolygon } from './clip';
import { centred, type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';
import { garmentWords } from './label';
import type { Lettering } from './lettering';
import { wornInk } from './worn-ink';

/** Between an outline and the words in it, mm. */
const INSET_MM = 3;

/** Sizes of small print, points. */
const SMALL_PT = [9.5, 9, 8.5, 8, 7.5, SMALLEST_PT];

export function coverInk(
  draft: Draft,
  layout: Layout,
  cover: Cover,
  { say, widthOf, worn }: Lettering,
): readonly Ink[] {
  const boxed = (paragraphs: readonly Paragraph[], box: Box): readonly Ink[] =>
    wordsOf(setWithin(paragraphs, inset(box), SMALL_PT, widthOf), inset(box), 'words');
  return [
    ...titleInk(draft, layout, worn ? { ...cover, title: narrower(cover.title) } : cover, say, widthOf),
    ...(worn ? wornInk(worn, besideWords(cover.title)) : []),
    stroke('marks', 'rule', roundedBox(cover.card, BANK_CARD_MM.corner), true),
    ...boxed(printing(say), cover.card),
    ...outline(cover.square),
    centred(
      say('print.square', { side: cover.square.width, unit: 'cm' }),
      besideSquare(cover.square),
      SMALLEST_PT,
      true,
      widthOf,
    ),
    ...(cover.joining
      ? wordsOf(setWithin(joining(say), cover.joining, SMALL_PT, widthOf), cover.joining, 'words')
      : []),
    ...cover.map.flatMap((cell) => mapInk(draft, layout, cell, widthOf)),
  ];
}

/** What the picture of the toy takes of the title's width, mm: it is as high as the title. */
const PICTURE_MM = 20;

const narrower = (box: Box): Box => ({ ...box, width: box.width - PICTURE_MM });

const besideWords = ({ x, y, width, height }: Box): Box => ({
  x: x + width - PICTURE_MM + 1,
  y: y - 0.5,
  width: PICTURE_MM - 1,
  height: height + 1.5,
});

function titleInk(draft: Draft, layout: Layout, cover: Cover, say: Say, widthOf: TextWidth): readonly Ink[] {
  const box = cover.title;
  const garment = garmentWords(draft, say);
  const madeOf = ({ order }: Draft) =>
    say('print.made-of', {
      fit: say(`fit.${order.fit}`),
      cloth: order.ownCloth?.name ?? say(`cloth.${order.cloth}`),
    });
  const values = { date: draft.order.date, count: layout.pages.length, engine: draft.engine };
  const paragraphs: readonly Paragraph[] = [
    { text: draft.toy, bold: true, large: 2 },
    { text: say('print.cover-line', { garment, ...values }) },
    { text: say('list.row', { of: [...new Set(garmentsIn(draft).map(madeOf))] }) },
    ...(layout.form === 'cut' ? [] : [{ text: say(`print.form.${layout.form}`), bold: true }]),
  ];
  const set = setWithin(paragraphs, box, [10, 9, 8, 7.5, SMALLEST_PT], widthOf);
  const y = box.y + box.height + 2;
  const stitches: Path = [line({ x: box.x + 0.5, y }, { x: box.x + cover.width - 0.5, y })];
  return [...wordsOf(set, box, 'words'), stroke('marks', 'stitch', stitches)];
}

function printing(say: Say): readonly Paragraph[] {
  return [
    { text: say('print.how-title'), bold: true, large: 1.3 },
    { text: say('print.how') },
    { text: say('print.card'), before: 0.8 },
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
function besideSquare({ x, y, width, height }: Box): Point {
  return { x: x + width / 2, y: y + height + 2.2 };
}

function joining(say: Say): readonly Paragraph[] {
  return [{ text: say('print.joining-title'), bold: true }, { text: say('print.joining') }];
}

function mapInk(draft: Draft, layout: Layout, { page: index, box }: MapCell, widthOf: TextWidth): readonly Ink[] {
  const page = layout.pages[index];
  if (!page) return [];
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return [
    ...page.placed.flatMap((placed) => silhouette(draft, placed, page, box)),
    ...outline(box),
    centred(page.name, middle, SMALLEST_PT, true, widthOf),
  ];
}

function silhouette(draft: Draft, placed: Page['placed'][number], page: Page, box: Box): readonly Ink[] {
  const piece = draft.pieces[placed.piece];
  if (!piece) return [];
  const scale = box.width / page.width;
  const shape = clippedPolygon(outlineOf(piece.cutLine, placed.whole).map(moved(placed.move)), wholePage(page));
  const small = shape.map(({ x, y }): Point => ({ x: box.x + x * scale, y: box.y + y * scale }));
  return [{ kind: 'fill', layer: 'marks', grey: 0.82, path: closedLine(small) }];
}

function wholePage({ width, height }: { readonly width: Mm; readonly height: Mm }): Box {
  return { x: 0, y: 0, width, height };
}

function outline(box: Box): readonly Ink[] {
  return [stroke('marks', 'rule', closedLine(cornersOf(box)), true)];
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

function closedLine(points: readonly Point[]): Path {
  const [home] = points;
  return polyline(home ? [...points, home] : []);
}

function inset({ x, y, width, height }: Box): Box {
  return { x: x + INSET_MM, y: y + INSET_MM, width: width - 2 * INSET_MM, height: height - 2 * INSET_MM };
}
