// The fewest pages there could be, as far as that is proven.

import { rotate } from '../geometry';
import { type Shape, shapeOf, stockOf, together } from '../packing';
import type { Area } from './area';
import { type Fitting, PIECE_GAP_MM } from './figure';
import { SLACK_MM } from './shapes';

/** How far apart the shapes are kept, mm: larger than the pieces by their slack, so that those keep their gap, less a hair. */
const APART_MM = PIECE_GAP_MM - 2 * SLACK_MM - 1e-6;

/** Pieces that take less of a page are not asked whether they may share it: they always may, as far as could be proven. */
const FULL_ENOUGH = 0.5;

/** What may be looked at for one page, as a share of all. */
const ONE_PAGE = 0.5;

/** Angles that differ by less are one. */
const SAME_TURN = 1e-6;

type Asked = {
  readonly fitting: readonly (readonly Fitting[])[];
  readonly area: Area;
  readonly tiles: number;
};

/** A piece in the turns it may lie in, half of which do where its page may be turned about, and its share of a page. */
type Part = { readonly turns: readonly number[]; readonly half: readonly number[]; readonly share: number };

/**
 * Fewer pages than that no arrangement could use: by the pieces' area, and since some of them share no page, turned by
 * quarters where they fit so and kept apart for the scissors. Tiles have pages of their own, behind the first where words
 * are small. What pages carry beside pieces is not counted. The more may be looked at, `most`, the more is proven.
 */
export function leastSheets({ fitting, area, tiles }: Asked): (most: number) => number {
  if (tiles > 0) return () => (area.print === 'large' ? tiles : tiles + 1);
  const shapes: Shape[] = [];
  const parts = fitting.map((turns): Part => {
    const outline = turns[0]?.figure.outline ?? [];
    const add = (turn: number): number => shapes.push(shapeOf([outline.map((p) => rotate(p, turn))], SLACK_MM)) - 1;
    const ways = turns.map(({ turn }) => turn % Math.PI).filter(isNew);
    const half = ways.map(add);
    const share = (shapes[half[0] ?? 0]?.area ?? 0) / (area.width * area.height);
    return { half, turns: [...half, ...ways.map((turn) => add(turn + Math.PI))], share };
  });
  parts.sort((a, b) => b.share - a.share);
  const byArea = Math.max(1, Math.ceil(parts.reduce((sum, { share }) => sum + share, 0)));
  const stock = stockOf(shapes, APART_MM);
  const known = new Map<string, boolean>();
  return (most) => {
    let left = most;
    const mayShare = (page: readonly Part[]): boolean => {
      left -= 1;
      const share = page.reduce((sum, part) => sum + part.share, 0);
      if (left <= 0 || page.length < 2 || share < FULL_ENOUGH) return true;
      if (share > 1) return false;
      const key = page.map((part) => part.half[0]).join();
      const before = known.get(key);
      if (before !== undefined) return before;
      const turns = page.map((part, index) => (index === 0 ? part.half : part.turns));
      const enough = Math.min(left, Math.ceil(most * ONE_PAGE));
      const { apart, looked } = together(stock, turns, area, enough);
      left -= looked;
      if (apart || looked < enough) known.set(key, !apart);
      return !apart;
    };
    let least = byArea;
    while (least < parts.length && !mayBeDealt(parts, least, mayShare)) least += 1;
    return least;
  };
}

/** Whether the pieces may be dealt to so many pages that no page is known to be too full. */
function mayBeDealt(parts: readonly Part[], most: number, mayShare: (page: readonly Part[]) => boolean): boolean {
  const deal = (index: number, pages: readonly (readonly Part[])[]): boolean => {
    const part = parts[index];
    if (!part) return true;
    const onPage = pages.some(
      (page, at) => mayShare([...page, part]) && deal(index + 1, pages.with(at, [...page, part])),
    );
    return onPage || (pages.length < most && deal(index + 1, [...pages, [part]]));
  };
  return deal(0, []);
}

function isNew(turn: number, index: number, all: readonly number[]): boolean {
  return all.findIndex((other) => Math.abs(other - turn) < SAME_TURN) === index;
}
