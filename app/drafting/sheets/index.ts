// The door of sheets: the pieces of a draft on pages of paper, as data in true millimetres. Pure, and the same for the
// same seed. Nothing is drawn here, no word is written, and no clock is read.

import type { Draft } from '../draft-types';
import { type Area, BOTTOM_MARGIN_MM, usableArea } from './area';
import { bareBoard, firstBoard, plainBoard, tileSheet, windowOf } from './boards';
import { type Figure, figureOf } from './figure';
import { bottomOf, type Sheet } from './fill';
import { turnsThatFit } from './fit';
import { type Form, formed } from './forms';
import { headOf, longIn } from './furniture';
import type { Layout, Page } from './layout';
import { leastSheets } from './least';
import { withLong } from './long';
import { type Mapped, mapWithin } from './map';
import { withNotes } from './notes';
import { pageOf } from './page';
import type { Paper } from './papers';
import { fewestSheets } from './search';
import { type TilePage, tile, tileName } from './tiles';

export { BOTTOM_MARGIN_MM, EDGE_MARGIN_MM, LARGEST_CORRECTION } from './area';
export { type Form, formed, forms } from './forms';
export { CHECK_MM, LONG_MM } from './furniture';
export type { CheckLine, Cover, Layout, MapCell, Move, Page, Placed, Strip, Tile } from './layout';
export { moved } from './move';
export { findPaper, type Paper, paperIds, papers } from './papers';

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
  /** Pieces left out, by their place in the draft. */
  readonly without?: readonly number[];
  /** What to draw everything larger by, where a printer is off: 50 / what the 50 mm line measured. 0.9 to 1.1. */
  readonly correction?: number;
};

/**
 * Lays a draft out on paper: a piece that fits a page is never split, pages are few, larger pieces are tiled. The
 * first page carries the cover; every page its check lines.
 */
export function layOut(draft: Draft, paper: Paper, options: LayOutOptions): Layout {
  const { halves = true, correction = 1, form = 'cut', without = [] } = options;
  const area = usableArea(paper, correction);
  const shown = formed(draft, form);
  const figures = shown.pieces
    .map((piece, index) => figureOf(piece, index, halves && form !== 'card'))
    .filter(({ piece }) => !without.includes(piece));
  const turns = figures.map((figure) => turnsThatFit(figure, area.width, area.height));
  const fitting = turns.filter((each) => each.length > 0);
  const tiled = tileAll(
    figures.filter((_, index) => turns[index]?.length === 0),
    area,
  );
  const size = { width: paper.width / correction, height: paper.height / correction };
  const head = headOf(area, guessed(size, tiled, fitting.length));
  const fresh = { plain: plainBoard(area), bare: bareBoard(area) };
  const filled = (from: readonly Sheet[]) => fewestSheets(fitting, from, fresh, options);
  const tiles = tiled.map((page) => tileSheet(area, page));
  const laid = withLong(area, head.box, (boxes) => {
    const first: Sheet = { kind: 'first', board: firstBoard(area, boxes), laid: [] };
    return withNotes(shown, [first, ...tiles], { fresh, area, roll: paper.roll === true, fill: filled });
  });
  const { noted, long } = laid;
  const { sheets } = noted;
  const pages = sheets.map((sheet, index): Page => {
    const tilePage = tiled[index - 1];
    const name = tilePage ? tileName(tilePage.tile.row, tilePage.tile.column) : String(index + 1);
    const words =
      index === noted.index ? { ...noted.box, x: noted.box.x + area.x, y: noted.box.y + area.y } : undefined;
    const used = Math.max(
      bottomOf(sheet),
      index === 0 ? head.box.height : 0,
      index === long.index ? long.box.y + long.box.height - area.y : 0,
      words ? noted.box.y + noted.box.height : 0,
    );
    const height = paper.roll && !tilePage ? area.y + Math.ceil(used) + BOTTOM_MARGIN_MM : size.height;
    const page = pageOf(shown, sheet, area, { name, width: size.width, height, tiled: tilePage });
    const checked = index === long.index ? { ...page, long: longIn(long.box) } : page;
    return words ? { ...checked, notes: noted.apart ? { words, key: head.aside } : { words } } : checked;
  });
  const map = pages.length > 1 ? mapWithin(pages, head.mapBox) : [];
  const cover = { ...head.cover, map };
  const least = leastSheets(
    figures.filter((_, index) => turns[index]?.length !== 0),
    area,
    tiled.length,
  );
  return {
    paper,
    form,
    correction,
    least,
    pages: pages.map((page, index) => (index === 0 ? { ...page, cover } : page)),
  };
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
