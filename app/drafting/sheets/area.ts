import type { Box } from '../packing';
import type { Paper } from './papers';
import type { Print } from './prints';

/** Nothing that matters lies nearer to an edge: some printers crop there (common practice, no source). */
export const EDGE_MARGIN_MM = 8;

/** The bottom, where sheet-fed printers let go of the paper (common practice, no source). */
export const BOTTOM_MARGIN_MM = 17;

/** How far a printer may be off and still be corrected. */
export const LARGEST_CORRECTION = 0.1;

/** The part of a page that may be used, mm, and how large words are there. */
export type Area = Box & { readonly print: Print };

/**
 * The usable part of a paper whose print is corrected. A printer that shrinks shows the whole page, smaller; one that
 * enlarges loses a margin all round, which nothing may lie in.
 */
export function usableArea(paper: Paper, correction: number, print: Print = 'usual'): Area {
  const width = paper.width / correction;
  const height = paper.height / correction;
  const lostX = Math.max(0, width - paper.width) / 2;
  const lostY = paper.roll ? 0 : Math.max(0, height - paper.height) / 2;
  return {
    print,
    x: EDGE_MARGIN_MM + lostX,
    y: EDGE_MARGIN_MM + lostY,
    width: width - 2 * (EDGE_MARGIN_MM + lostX),
    height: height - EDGE_MARGIN_MM - BOTTOM_MARGIN_MM - 2 * lostY,
  };
}
