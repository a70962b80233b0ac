// The door of sheets: the pieces of a draft on pages of paper, as data in true millimetres. Pure, and the same for the
// same seed. Nothing is drawn here, no word is written, and no clock is read.

import type { Draft } from '../draft-types';
import { type Area, BOTTOM_MARGIN_MM, usableArea } from './area';
import { arranged, piecesOnly } from './arrange';
import { tileSheet, windowOf } from './boards';
import { type Figure, figureOf } from './figure';
import { bottomOf, type Sheet } from './fill';
import { turnsThatFit } from './fit';
import { type Form, formed } from './forms';
import { stripReach } from './furniture';
import type { Layout, Page } from './layout';
import { type Mapped, mapWithin } from './map';
import { pageOf } from './page';
import type { Paper } from './papers';
import type { Print } from './prints';
import { type TilePage, tile, tileName } from './tiles';

export { BOTTOM_MARGIN_MM, EDGE_MARGIN_MM, LARGEST_CORRECTION } from './area';
export { type Form, formed, forms } from './forms';
export { CHECK_MM, LONG_MM } from './furniture';
export type { CheckLine, Cover, Furniture, Layout, MapCell, Move, Page, Placed, Strip, Tile } from './layout';
export { moved } from './move';
export { findPaper, type Paper, paperIds, papers } from './papers';
export { type Print, prints } from './prints';

/** Fillings tried unless the caller says otherwise: well under a second for a dozen pieces. */
export const USUAL_EFFORT = 40;

export type LayOutOptions = {
  /** Fillings tried: more may save a page. */
  readonly effort: number;
  readonly seed: number;
  /** Pieces on the fold as halves (the usual way), or unfolded where false, and always as cards. */
  readonly halves?: boolean;
  /** What the paper shows of each piece: `cut` unless told. */
  readonly form?: Form;
  /** How large words and lines are: `usual` unless told. */
  readonly print?: Print;
  /** Pieces left out, by their place in the draft. */
  readonly without?: readonly number[];
  /** What to draw everything larger by, where a printer is off: 50 / what the 50 mm line measured. 0.9 to 1.1. */
  readonly correction?: number;
};

/**
 * Lays a draft out on paper: a piece that fits a page is never split, pages are few, larger pieces are tiled. The
 * first page carries the cover, every page its check lines, and one or another what furniture there is besides.
 */
export function layOut(draft: Draft, paper: Paper, options: LayOutOptions): Layout {
  const { halves = true, correction = 1, form = 'cut', print = 'usual', without = [] } = options;
  const area = usableArea(paper, correction, print);
  const shown = formed(draft, form);
  const figures = shown.pieces
    .map((piece, index) => figureOf(piece, index, halves && form !== 'card', print))
    .filter(({ piece }) => !without.includes(piece));
  const turns = figures.map((figure) => turnsThatFit(figure, area.width, area.height));
  const fitting = turns.filter((each) => each.length > 0);
  const tiled = tileAll(
    figures.filter((_, index) => turns[index]?.length === 0),
    area,
  );
  const size = { width: paper.width / correction, height: paper.height / correction };
  const wanted = {
    ...options,
    draft: shown,
    area,
    fitting,
    tiles: tiled.map((page) => tileSheet(area, page)),
    mapped: guessed(size, tiled, fitting.length),
    roll: paper.roll === true,
  };
  const laid = { paper, form, print, correction };
  const pagesOf = (sheets: readonly Sheet[], head: number): readonly Page[] => {
    const firstTile = sheets.findIndex(({ kind }) => kind === 'tile');
    return sheets.map((sheet, index) => {
      const tilePage = firstTile < 0 ? undefined : tiled[index - firstTile];
      const name = tilePage ? tileName(tilePage.tile.row, tilePage.tile.column) : String(index + 1);
      const used = Math.max(bottomOf(sheet), index === 0 ? head : 0);
      const height = paper.roll && !tilePage ? area.y + Math.ceil(used) + BOTTOM_MARGIN_MM : size.height;
      return pageOf(shown, sheet, area, { name, width: size.width, height, tiled: tilePage });
    });
  };
  if (print === 'large') {
    const { sheets, least } = piecesOnly(wanted);
    return { ...laid, least, pages: pagesOf(sheets, stripReach(area)) };
  }
  const { head, sheets, least } = arranged(wanted);
  const pages = pagesOf(sheets, head.box.height);
  const cover = { ...head.cover, map: pages.length > 1 ? mapWithin(pages, head.mapBox) : [] };
  return { ...laid, least, pages: pages.map((page, index) => (index === 0 ? { ...page, cover } : page)) };
}

/** Every piece too large for a page, each with rows of its own letters. */
function tileAll(figures: readonly Figure[], area: Area): readonly TilePage[] {
  const pages: TilePage[] = [];
  for (const figure of figures) {
    const firstRow = Math.max(-1, ...pages.map((page) => page.tile.row)) + 1;
    pages.push(...tile(figure, windowOf(area), firstRow));
  }
  return pages;
}

/** The pages the map must have room for, before it is known how many there are: at most one for each fitting piece. */
function guessed(size: Pick<Page, 'width' | 'height'>, tiled: readonly TilePage[], fitting: number): readonly Mapped[] {
  const single: readonly Mapped[] = Array.from({ length: fitting + 1 }, () => size);
  return [...single, ...tiled.map((page) => ({ ...size, tile: page.tile }))];
}
