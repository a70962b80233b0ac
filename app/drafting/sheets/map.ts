// The pages drawn small, so that she sees how they lie: single pages in a row, the pages of a large piece as they join.

import type { Mm } from '../../body';
import type { Box } from '../packing';
import type { MapCell, Tile } from './layout';

/** A page as the map sees it. */
export type Mapped = {
  readonly width: Mm;
  readonly height: Mm;
  readonly tile?: Pick<Tile, 'piece' | 'row' | 'column'>;
};

/** Narrowest a page may be drawn, mm: its name must fit at 7 pt. */
const MAP_PAGE_MM = 7.5;
/** Width of a page in a band of its own, mm. */
const MAP_PAGE_BAND_MM = 10;
/** Widest, mm: larger says no more. */
const MAP_PAGE_WIDEST_MM = 18;
/** Between groups, mm. */
const BETWEEN_MM = 2.5;
/** Between the pages of one piece, mm. */
const JOIN_MM = 0.8;
/** Each try draws pages this much smaller. */
const SMALLER = 0.94;

type Group = { readonly cells: readonly MapCell[]; readonly width: Mm; readonly height: Mm };

/** The largest map within a box; where even the smallest is too tall it goes on below the box. */
export function mapWithin(pages: readonly Mapped[], box: Box): readonly MapCell[] {
  const paper = Math.max(...pages.map((page) => page.width));
  const least = MAP_PAGE_MM / paper;
  for (let scale = MAP_PAGE_WIDEST_MM / paper; scale > least; scale *= SMALLER) {
    const { cells, height } = flow(groupsOf(pages, scale), box);
    if (height <= box.height && cells.every((cell) => cell.box.x + cell.box.width <= box.x + box.width)) return cells;
  }
  return flow(groupsOf(pages, least), box).cells;
}

/** Height of a band of the spot's width that holds all pages drawn small but readable, mm. */
export function mapBandHeight(pages: readonly Mapped[], spot: Spot): Mm {
  return heightOf(pages, MAP_PAGE_BAND_MM, spot);
}

/** The same where they are as small as can be. */
export function mapLeastHeight(pages: readonly Mapped[], spot: Spot): Mm {
  return heightOf(pages, MAP_PAGE_MM, spot);
}

/** What the map takes in one row, as small as can be. */
export function mapLeastSize(pages: readonly Mapped[]): { readonly width: Mm; readonly height: Mm } {
  const paper = Math.max(...pages.map(({ width }) => width));
  const { cells, height } = flow(groupsOf(pages, MAP_PAGE_MM / paper), { x: 0, y: 0, width: Infinity });
  return { width: Math.max(...cells.map(({ box }) => box.x + box.width)), height };
}

type Spot = Pick<Box, 'x' | 'y' | 'width'>;

function heightOf(pages: readonly Mapped[], page: Mm, spot: Spot): Mm {
  const paper = Math.max(...pages.map(({ width }) => width));
  return flow(groupsOf(pages, page / paper), spot).height;
}

function flow(groups: readonly Group[], box: Spot): { readonly cells: readonly MapCell[]; readonly height: Mm } {
  const cells: MapCell[] = [];
  let x = box.x;
  let y = box.y;
  let tallest = 0;
  for (const group of groups) {
    if (x > box.x && x + group.width > box.x + box.width) {
      x = box.x;
      y += tallest + BETWEEN_MM;
      tallest = 0;
    }
    for (const cell of group.cells) {
      cells.push({ page: cell.page, box: { ...cell.box, x: cell.box.x + x, y: cell.box.y + y } });
    }
    x += group.width + BETWEEN_MM;
    tallest = Math.max(tallest, group.height);
  }
  return { cells, height: y + tallest - box.y };
}

function groupsOf(pages: readonly Mapped[], scale: number): readonly Group[] {
  const groups = new Map<string, { readonly page: number; readonly mapped: Mapped }[]>();
  pages.forEach((mapped, page) => {
    const key = mapped.tile ? `piece ${mapped.tile.piece}` : `page ${page}`;
    groups.set(key, [...(groups.get(key) ?? []), { page, mapped }]);
  });
  return [...groups.values()].map((members) => {
    const rows = members.map(({ mapped }) => mapped.tile?.row ?? 0);
    const firstRow = Math.min(...rows);
    const cells = members.map(({ page, mapped }): MapCell => {
      const width = mapped.width * scale;
      const height = mapped.height * scale;
      const column = mapped.tile?.column ?? 0;
      const row = (mapped.tile?.row ?? 0) - firstRow;
      return { page, box: { x: column * (width + JOIN_MM), y: row * (height + JOIN_MM), width, height } };
    });
    return {
      cells,
      width: Math.max(...cells.map(({ box }) => box.x + box.width)),
      height: Math.max(...cells.map(({ box }) => box.y + box.height)),
    };
  });
}
