// The first page's head: whose pattern it is, and all pages small.

import type { Mm, Say } from '../../body';
import type { Draft } from '../draft-types';
import { line, type Path, type Point } from '../geometry';
import { garmentsIn } from '../outfit';
import type { Box } from '../packing';
import { outlineOf } from '../pieces/outline';
import { STITCHES_MM } from '../sheets/furniture';
import type { Cover, Layout, MapCell, Page } from '../sheets/layout';
import { moved } from '../sheets/move';
import { clippedPolygon } from './clip';
import { closedLine, outline } from './closed';
import { centred, type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';
import { garmentWords } from './label';
import type { Lettering } from './lettering';
import { wornInk } from './worn-ink';

export function coverInk(
  draft: Draft,
  layout: Layout,
  { cover, card }: Pick<Page, 'cover' | 'card'>,
  { say, widthOf, worn }: Lettering,
): readonly Ink[] {
  if (!cover) return [];
  const beside = worn ? { ...cover, title: narrower(cover.title) } : cover;
  // How to print stands in the card's outline; where that lies on another page, the first says it shortly.
  const shortly: readonly Paragraph[] = card ? [] : [{ text: say('print.how-title'), bold: true }];
  return [
    ...titleInk(draft, layout, beside, shortly, say, widthOf),
    ...(worn ? wornInk(worn, besideWords(cover.title)) : []),
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

function titleInk(
  draft: Draft,
  layout: Layout,
  cover: Cover,
  more: readonly Paragraph[],
  say: Say,
  widthOf: TextWidth,
): readonly Ink[] {
  const box = cover.title;
  const set = setWithin([...titleWords(draft, layout, say), ...more], box, [10, 9, 8, 7.5, SMALLEST_PT], widthOf);
  const y = box.y + box.height + STITCHES_MM;
  const stitches: Path = [line({ x: box.x + 0.5, y }, { x: box.x + cover.width - 0.5, y })];
  return [...wordsOf(set, box, 'words'), stroke('marks', 'stitch', stitches)];
}

/** Whose pattern it is, of what, and of when. */
export function titleWords(draft: Draft, layout: Layout, say: Say): readonly Paragraph[] {
  const garment = garmentWords(draft, say);
  const madeOf = ({ order }: Draft) =>
    say('print.made-of', {
      fit: say(`fit.${order.fit}`),
      cloth: order.ownCloth?.name ?? say(`cloth.${order.cloth}`),
    });
  const values = { date: draft.order.date, count: layout.pages.length, engine: draft.engine };
  return [
    { text: say('list.row', { of: [draft.toy] }), bold: true, large: 2 },
    { text: say('print.cover-line', { garment, ...values }) },
    { text: say('list.row', { of: [...new Set(garmentsIn(draft).map(madeOf))] }) },
    ...(layout.form === 'cut' ? [] : [{ text: say(`print.form.${layout.form}`), bold: true }]),
  ];
}

/** One page drawn small, with its name. */
export function mapInk(
  draft: Draft,
  layout: Layout,
  { page: index, box }: MapCell,
  widthOf: TextWidth,
): readonly Ink[] {
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
