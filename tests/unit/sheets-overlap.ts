import polygonClipping from 'polygon-clipping';
import { expect } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import type { Point } from '../../app/drafting/geometry';
import { cornersOf, outlineOf } from '../../app/drafting/pieces/outline';
import { findPaper, type Layout, moved, type Page, type Paper } from '../../app/drafting/sheets';

/** Two pieces overlap where they share more than this, mm². */
const SHARED_MM2 = 1e-9;

export function paper(id: string): Paper {
  return findPaper(id) ?? expect.fail(`no paper ${id}`);
}

/** Pages that show part of a piece. */
export function tiles(layout: Layout): readonly Page[] {
  return layout.pages.filter((page) => page.tile);
}

/** Outlines to cut on one page, in page mm. */
export function outlines(draft: Draft, page: Page): readonly (readonly Point[])[] {
  return page.placed.map((placed) => {
    const piece = draft.pieces[placed.piece] ?? expect.fail('no such piece');
    return outlineOf(piece.cutLine, placed.whole).map(moved(placed.move));
  });
}

/** How many pairs of pieces overlap, by a library that did not lay them out. */
export function clashes(draft: Draft, layout: Layout): number {
  return layout.pages.reduce((count, page) => {
    const shapes = outlines(draft, page);
    return count + shapes.flatMap((a, i) => shapes.slice(i + 1).filter((b) => shared(a, b) > SHARED_MM2)).length;
  }, 0);
}

/** Boxes of furniture that lie over a line to cut, or over one another; the square may lie in the card. */
export function furnitureClashes(draft: Draft, layout: Layout): readonly string[] {
  return layout.pages.flatMap((page) => {
    const boxes = furnitureOn(page);
    const cut = page.tile ? [] : outlines(draft, page);
    return boxes.flatMap(([name, box], i) => [
      ...cut
        .filter((ring) => ![0, area(closedBox(box))].some((all) => Math.abs(shared(ring, box) - all) < 1e-3))
        .map(() => name),
      ...boxes
        .slice(i + 1)
        .flatMap(([other, its]) => (shared(box, its) > 1e-3 && other !== 'square' ? [`${name} ${other}`] : [])),
    ]);
  });
}

/** What a page carries beside pieces, by name, as corners. */
export function furnitureOn({
  card,
  square,
  joining,
  notes,
  care,
  key,
  cover,
}: Page): readonly (readonly [string, readonly Point[]])[] {
  const boxes = { title: cover?.title, card, square, joining, notes: notes?.words, care, key };
  return Object.entries(boxes).flatMap(([name, box]) => (box ? [[name, cornersOf(box)] as const] : []));
}

const closedBox = (corners: readonly Point[]): Ring => corners.map(({ x, y }): [number, number] => [x, y]);

type Ring = [number, number][];

function shared(a: readonly Point[], b: readonly Point[]): number {
  if (apart(a, b, (p) => p.x) || apart(a, b, (p) => p.y)) return 0;
  const ring = (points: readonly Point[]): Ring[] => [points.map(({ x, y }): [number, number] => [x, y])];
  const parts = polygonClipping.intersection(ring(a), ring(b));
  return parts.reduce((sum, [outer = []]) => sum + area(outer), 0);
}

/** Whether nothing of one lies where anything of the other does, along one axis: most pairs need no closer look. */
function apart(a: readonly Point[], b: readonly Point[], along: (p: Point) => number): boolean {
  const [ours, theirs] = [a.map(along), b.map(along)];
  return Math.max(...ours) <= Math.min(...theirs) || Math.max(...theirs) <= Math.min(...ours);
}

function area(ring: Ring): number {
  const twice = ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + x * v - u * y;
  }, 0);
  return Math.abs(twice) / 2;
}
