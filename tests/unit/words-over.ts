import { jsPDF } from 'jspdf';
import { readFace } from '../../app/command/faces';
import { facesAtHand, facesOfLanguage } from '../../app/drafting/faces';
import { flatten, type Point, rotate } from '../../app/drafting/geometry';
import type { Ink, Words } from '../../app/drafting/output';
import { pdfBrush } from '../../app/drafting/output/pdf-brush';
import type { Print } from '../../app/drafting/sheets';
import { directionOf } from '../../app/words';

const MM_PER_PT = 25.4 / 72;
/** Letters reach this far above the baseline, and those with tails this far below it, as shares of the size. */
const ABOVE = 0.7;
const BELOW = 0.1;
const TAILS = /[gjpqyQ,;()]/;
/** Read so much smaller than they are, mm. */
const HAIR_MM = 0.1;
/** No printer reaches nearer to the edge of a page, mm. */
const EDGE_MM = 3;

type Box = { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };
type Drawn = { readonly is: string; readonly line: readonly Point[]; readonly box: Box };

/** How wide words are in the standard fonts, mm, as the PDF library says. */
export const realWidth = (print: Print = 'usual') => pdfBrush(new jsPDF(), 1, undefined, print).widthOf;

/** How wide a language’s words are in the faces its pages are printed with, mm. */
export async function printedWidth(language: string, print: Print = 'usual'): Promise<ReturnType<typeof realWidth>> {
  const letters = facesAtHand(readFace);
  await letters.fetch(facesOfLanguage(language));
  const direction = directionOf(language);
  return letters.make((faces) => pdfBrush(new jsPDF(), 1, { language, direction, faces }, print).widthOf);
}

/** Words that lie over a line or over each other, within each other too, or off a page of that size. */
export function wordsOver(
  ink: readonly Ink[],
  widthOf: ReturnType<typeof realWidth>,
  page = { width: Infinity, height: Infinity },
): readonly string[] {
  const words = ink.flatMap((each) => (each.kind === 'words' ? [drawn(each.text, cover(each, widthOf))] : []));
  const lines = ink.flatMap((each) => (each.kind === 'stroke' ? [drawn('a line', flatten(each.path, 0.2))] : []));
  return words.flatMap((one, i) => {
    const word = words.slice(i + 1).find((other) => over(one, other) || over(other, one));
    const line = lines.find((other) => over(one, other));
    return [
      ...[word, line].flatMap((other) => (other ? [`${one.is} over ${other.is}`] : [])),
      ...(isOff(one.box, page) ? [`${one.is} off the page`] : []),
    ];
  });
}

const isOff = ({ x0, x1, y0, y1 }: Box, { width, height }: { readonly width: number; readonly height: number }) =>
  x0 < EDGE_MM || y0 < EDGE_MM || x1 > width - EDGE_MM || y1 > height - EDGE_MM;

/** The closed box of what a text covers, a hair smaller than it is. */
function cover({ at, text, size, turn, bold }: Words, widthOf: ReturnType<typeof realWidth>): readonly Point[] {
  const [left, right] = [HAIR_MM, widthOf(text, size, bold) - HAIR_MM];
  const up = -size * MM_PER_PT * ABOVE + HAIR_MM;
  const down = (TAILS.test(text) ? size * MM_PER_PT * BELOW : 0) - HAIR_MM;
  const corners = [
    { x: left, y: down },
    { x: right, y: down },
    { x: right, y: up },
    { x: left, y: up },
    { x: left, y: down },
  ];
  return corners.map((corner) => {
    const step = rotate(corner, turn);
    return { x: at.x + step.x, y: at.y + step.y };
  });
}

function drawn(is: string, line: readonly Point[]): Drawn {
  const [xs, ys] = [line.map(({ x }) => x), line.map(({ y }) => y)];
  return { is, line, box: { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) } };
}

/** Whether a line crosses a closed box or has a point within it. */
function over(one: Drawn, other: Drawn): boolean {
  const [a, b] = [one.box, other.box];
  if (a.x0 > b.x1 || b.x0 > a.x1 || a.y0 > b.y1 || b.y0 > a.y1) return false;
  const [box, line] = [sides(one.line), sides(other.line)];
  return (
    box.some(([p, q]) => line.some(([r, s]) => meet(p, q, r, s))) ||
    other.line.some((p) => Math.abs(box.reduce((sum, [q, r]) => sum + Math.sign(side(q, r, p)), 0)) === box.length)
  );
}

const sides = (line: readonly Point[]) => line.slice(1).map((q, i) => [line[i] ?? q, q] as const);

const meet = (p: Point, q: Point, r: Point, s: Point): boolean =>
  side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;

const side = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
