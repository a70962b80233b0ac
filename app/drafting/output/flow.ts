// Words in boxes: broken into lines, set as large as fits.

import type { Mm } from '../../body';
import { type Point, rotate } from '../geometry';
import type { Box } from '../packing';
import { partsOf, wordsOf as wordsIn } from './breaks';
import { type Layer, MM_PER_PT, type TextWidth, type Words } from './ink';

/** A run of words of one look; `large` is how much larger than the rest it is set; `before` mm of air above it. */
export type Paragraph = {
  readonly text: string;
  readonly bold?: boolean;
  readonly large?: number;
  readonly before?: Mm;
};

/** Paragraphs broken into lines of at most a width: `width` is that of the longest. */
export type Setting = {
  readonly lines: readonly SettingLine[];
  readonly width: Mm;
  readonly height: Mm;
  readonly direction: 'ltr' | 'rtl';
};
export type SettingLine = {
  readonly text: string;
  readonly size: number;
  readonly bold: boolean;
  readonly width: Mm;
  readonly baseline: Mm;
};

/** Height of a line and where its baseline lies, as shares of the size: Helvetica's, loosely set. */
const LINE_SHARE = 1.26;
const BASELINE_SHARE = 0.92;

/** Breaks paragraphs at a size in points; no line is wider than `width` unless a single letter is. */
export function setIn(paragraphs: readonly Paragraph[], size: number, width: Mm, widthOf: TextWidth): Setting {
  const lines: SettingLine[] = [];
  let y = 0;
  let widest = 0;
  for (const { text, bold = false, large = 1, before = 0 } of paragraphs) {
    const own = size * large;
    if (lines.length > 0) y += before;
    for (const line of brokenOnce(text, own, bold, width, widthOf)) {
      const wide = widthOf(line, own, bold);
      lines.push({ text: line, size: own, bold, width: wide, baseline: y + own * MM_PER_PT * BASELINE_SHARE });
      y += own * MM_PER_PT * LINE_SHARE;
      widest = Math.max(widest, wide);
    }
  }
  return { lines, width: widest, height: y, direction: widthOf.direction ?? 'ltr' };
}

/** The paragraphs at the largest of the sizes (given largest first) that fits the box; at the last where none does. */
export function setWithin(
  paragraphs: readonly Paragraph[],
  box: { readonly width: Mm; readonly height: Mm },
  sizes: readonly number[],
  widthOf: TextWidth,
): Setting {
  let set: Setting = { lines: [], width: 0, height: 0, direction: 'ltr' };
  for (const size of sizes) {
    set = setIn(paragraphs, size, box.width, widthOf);
    if (set.height <= box.height && set.width <= box.width) return set;
  }
  return set;
}

/**
 * The lines as words, from the side of the box where the language begins; `turn` −90° sets them upwards from the box's
 * bottom left corner.
 */
export function wordsOf(set: Setting, box: Box, layer: Layer, turn: 0 | 'up' = 0): readonly Words[] {
  const up = turn === 'up';
  const origin: Point = { x: box.x, y: up ? box.y + box.height : box.y };
  const radians = up ? -Math.PI / 2 : 0;
  const room = up ? box.height : box.width;
  return set.lines.map(({ text, size, bold, width, baseline }): Words => {
    const step = rotate({ x: set.direction === 'rtl' ? room - width : 0, y: baseline }, radians);
    return {
      kind: 'words',
      layer,
      at: { x: origin.x + step.x, y: origin.y + step.y },
      turn: radians,
      size,
      bold,
      text,
    };
  });
}

/** One line centred on a place, its middle `size` points high. */
export function centred(text: string, at: Point, size: number, bold: boolean, widthOf: TextWidth, turn = 0): Words {
  const half = widthOf(text, size, bold) / 2;
  const step = rotate({ x: -half, y: size * MM_PER_PT * 0.36 }, turn);
  return { kind: 'words', layer: 'words', at: { x: at.x + step.x, y: at.y + step.y }, turn, size, bold, text };
}

/** A text as lines: labels of a page say the same again and again. */
function brokenOnce(text: string, size: number, bold: boolean, width: Mm, widthOf: TextWidth): readonly string[] {
  const known = brokenBy.get(widthOf) ?? new Map<string, BrokenText>();
  brokenBy.set(widthOf, known);
  const broken = known.get(text) ?? { parts: undefined, ways: [] };
  known.set(text, broken);
  const way = broken.ways.find((each) => each.width === width && each.size === size && each.bold === bold);
  if (way) return way.lines;
  const lines = linesOf(text, broken, (part) => widthOf(part, size, bold), width);
  broken.ways.push({ size, bold, width, lines });
  return lines;
}

/** What is known of a text: its parts, once it is longer than a line, and the lines it was broken into. */
type BrokenText = { parts: readonly Part[] | undefined; readonly ways: Way[] };
type Part = { readonly phrase: string; readonly words: readonly string[] };
type Way = {
  readonly size: number;
  readonly bold: boolean;
  readonly width: Mm;
  readonly lines: readonly string[];
};
const brokenBy = new WeakMap<TextWidth, Map<string, BrokenText>>();

function linesOf(text: string, known: BrokenText, widthOf: (part: string) => Mm, width: Mm): readonly string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (phrase: string) => widthOf(bare(phrase)) <= width;
  if (text !== '' && fits(text)) return [bare(text)];
  known.parts ??= partsOf(text).map((phrase) => ({ phrase, words: wordsIn(phrase) }));
  const parts = known.parts.flatMap(({ phrase, words }) => (words.length < 2 || fits(phrase) ? [phrase] : words));
  for (const part of parts) {
    const longer = line + part;
    if (widthOf(bare(longer)) <= width) line = longer;
    else {
      if (line !== '') lines.push(bare(line));
      const word = bare(part);
      const hewnParts = fits(word) ? [part] : hewn(word, widthOf, width);
      lines.push(...hewnParts.slice(0, -1));
      line = hewnParts.at(-1) ?? '';
    }
  }
  return line === '' ? lines : [...lines, bare(line)];
}

/** Without the spaces at its end. */
const bare = (line: string): string => (line.endsWith(' ') ? line.replace(/ +$/, '') : line);

/** A word too long for a line, cut between letters. */
function hewn(word: string, widthOf: (part: string) => Mm, width: Mm): readonly string[] {
  const parts: string[] = [];
  let part = '';
  for (const { segment } of new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(word)) {
    if (part !== '' && widthOf(part + segment) > width) {
      parts.push(part);
      part = '';
    }
    part += segment;
  }
  return [...parts, part];
}
