import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Point } from '../../app/drafting/geometry';

/** One default user-space unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
const MM_PER_UNIT = 25.4 / 72;

/** What a PDF draws, read back by a library that did not write it: mm from the page's upper left corner, y down. */
export type ReadPage = {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly ReadStroke[];
  readonly fills: readonly (readonly Point[])[];
  readonly texts: readonly ReadText[];
};
/** One subpath as chords that stray no more than 0.001 mm. */
export type ReadStroke = { readonly points: readonly Point[]; readonly width: number; readonly dashed: boolean };
export type ReadText = {
  readonly text: string;
  readonly size: number;
  readonly turn: number;
  readonly at: Point;
  readonly width: number;
};

/** How pdf.js numbers what a path is made of. */
const MOVE = 0;
const LINE = 1;
const CURVE = 2;
const CLOSE = 4;

/** Chords to a curve: an armhole 200 mm long strays under 0.001 mm. */
const CHORDS = 200;

export async function readPdf(bytes: Uint8Array) {
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const to = (x: number, y: number): Point => ({ x: (x - left) * MM_PER_UNIT, y: (top - y) * MM_PER_UNIT });
    const { fnArray, argsArray } = await page.getOperatorList();
    const strokes: ReadStroke[] = [];
    const fills: (readonly Point[])[] = [];
    let width = 0;
    let dashed = false;
    fnArray.forEach((operator, index) => {
      const args: unknown = argsArray[index];
      if (!Array.isArray(args)) return;
      if (operator === OPS.setLineWidth) width = Number(args[0]) * MM_PER_UNIT;
      if (operator === OPS.setDash) dashed = Array.isArray(args[0]) && args[0].length > 0;
      if (operator !== OPS.constructPath) return;
      for (const points of subpaths(args[1], to)) {
        if (args[0] === OPS.fill) fills.push(points);
        else strokes.push({ points, width, dashed });
      }
    });
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): ReadText[] => {
      if (!('str' in item) || item.str === '') return [];
      const [a = 0, b = 0, , , x = 0, y = 0] = item.transform.map(Number);
      const place = { turn: -Math.atan2(b, a), at: to(x, y) };
      return [{ text: item.str, size: Math.hypot(a, b), ...place, width: item.width * MM_PER_UNIT }];
    });
    pages.push({ width: (right - left) * MM_PER_UNIT, height: (top - bottom) * MM_PER_UNIT, strokes, fills, texts });
  }
  const preferences: unknown = await pdf.getViewerPreferences();
  const { info } = await pdf.getMetadata();
  return { pages, preferences, info };
}

function subpaths(data: unknown, to: (x: number, y: number) => Point): readonly (readonly Point[])[] {
  const numbers = Array.isArray(data) && data[0] ? Array.from(Object.values(data[0]), Number) : [];
  const paths: Point[][] = [];
  let path: Point[] = [];
  for (let i = 0; i < numbers.length; ) {
    const next = (): Point => to(numbers[i++] ?? 0, numbers[i++] ?? 0);
    const command = numbers[i++];
    if (command === MOVE) {
      path = [next()];
      paths.push(path);
    } else if (command === LINE) path.push(next());
    else if (command === CURVE) path.push(...chords(path[path.length - 1], next(), next(), next()));
    else if (command === CLOSE && path[0]) path.push(path[0]);
    else throw new Error(`path command ${command}`);
  }
  return paths;
}

function chords(a: Point = { x: 0, y: 0 }, b: Point, c: Point, d: Point): readonly Point[] {
  return Array.from({ length: CHORDS }, (_, i) => {
    const t = (i + 1) / CHORDS;
    const s = 1 - t;
    const at = (p: number, q: number, r: number, o: number): number =>
      s ** 3 * p + 3 * s * s * t * q + 3 * s * t * t * r + t ** 3 * o;
    return { x: at(a.x, b.x, c.x, d.x), y: at(a.y, b.y, c.y, d.y) };
  });
}
