// Words over as many pages as they take, and where on the last of them there is room for more.

import type { Mm, Unit } from '../../body';
import type { Box } from '../packing';
import { papers } from '../sheets/papers';
import { type Paragraph, setIn, wordsOf } from './flow';
import { type Ink, MM_PER_PT, type TextWidth } from './ink';

const MARGIN_MM = 14;
/** Printers let go of the paper there (common practice, no source). */
const FOOT_MM = 18;

type Size = { readonly width: Mm; readonly height: Mm };
type Pages = { readonly pages: readonly (readonly Ink[])[]; readonly end: Mm };

/** Paragraphs at a size in points; `end` is how far down the last page is used. */
export function wordPages(paragraphs: readonly Paragraph[], page: Size, size: number, widthOf: TextWidth): Pages {
  const box = roomIn(page);
  const pages: Ink[][] = [[]];
  let y = box.y;
  for (const paragraph of paragraphs) {
    const air = y === box.y ? 0 : (paragraph.before ?? 0);
    const set = setIn([paragraph], size, box.width, widthOf);
    const line = size * (paragraph.large ?? 1) * MM_PER_PT;
    const kept = paragraph.bold ? 2 * line : 0;
    if (y + air + set.height + kept > box.y + box.height && y > box.y) {
      pages.push([]);
      y = box.y;
    } else y += air;
    pages[pages.length - 1]?.push(...wordsOf(set, { ...box, y, height: set.height }, 'words'));
    y += set.height;
  }
  return { pages, end: y };
}

/** The part of a page of words that is written on. */
export function roomIn({ width, height }: Size): Box {
  return { x: MARGIN_MM, y: MARGIN_MM, width: width - 2 * MARGIN_MM, height: height - MARGIN_MM - FOOT_MM };
}

/** Words need no large sheet: Letter where that is the paper, or inches are; else A4. */
export function paperForWords(paper: string, units: Unit): Size {
  const american = paper === 'letter' || paper === 'legal' || (paper === 'either' && units === 'in');
  return american ? papers.letter : papers.a4;
}
