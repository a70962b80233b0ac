// Words, and drawings among them, over as many pages as they take, and where on the last of them there is room for more.

import type { Mm, Unit } from '../../body';
import type { Box } from '../packing';
import { papers } from '../sheets/papers';
import { type Paragraph, setIn, wordsOf } from './flow';
import type { Ink, TextWidth } from './ink';

const MARGIN_MM = 14;
/** Printers let go of the paper there (common practice, no source). */
const FOOT_MM = 18;

type Size = { readonly width: Mm; readonly height: Mm };
type Pages = { readonly pages: readonly (readonly Ink[])[]; readonly end: Mm };

/** A drawing among the words, as wide as they are. */
export type Block = {
  readonly height: Mm;
  readonly before: Mm;
  readonly draw: (at: { readonly x: Mm; readonly y: Mm }) => readonly Ink[];
};

/** Paragraphs at a size in points, so much off the right edge; `end` is how far down the last page is used. */
export function wordPages(
  parts: readonly (Paragraph | Block)[],
  page: Size,
  size: number,
  widthOf: TextWidth,
  off: Mm = 0,
): Pages {
  const whole = roomIn(page);
  const box = { ...whole, width: whole.width - off };
  const pages: Ink[][] = [[]];
  let y = box.y;
  for (const [index, part] of parts.entries()) {
    const { height, draw } = blockOf(part);
    const next = parts[index + 1];
    // A title stays with what follows it.
    const kept = 'text' in part && part.bold && next ? (next.before ?? 0) + blockOf(next).height : 0;
    const air = y === box.y ? 0 : (part.before ?? 0);
    if (y + air + height + kept > box.y + box.height && y > box.y) {
      pages.push([]);
      y = box.y;
    } else y += air;
    pages[pages.length - 1]?.push(...draw({ x: box.x, y }));
    y += height;
  }
  return { pages, end: y };

  function blockOf(part: Paragraph | Block): Pick<Block, 'height' | 'draw'> {
    if ('draw' in part) return part;
    const set = setIn([part], size, box.width, widthOf);
    return { height: set.height, draw: ({ y: top }) => wordsOf(set, { ...box, y: top, height: set.height }, 'words') };
  }
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
