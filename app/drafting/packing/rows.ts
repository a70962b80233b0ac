// An outline as rows: for each millimetre of height, the stretches it covers there or anywhere in that row. Exact in x,
// generous in y by at most a row, so that what does not touch as rows does not touch.

import type { Point } from '../geometry';
import { merged, type Span, type Spans } from './spans';

/** Height of a row, mm: finer only costs time, coarser wastes paper. */
export const ROW_MM = 1;

/** Rows of one or more outlines, from the top left corner of the box round them; `left` and `top` say where that was. */
export type Rows = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly rows: readonly Spans[];
};

/** The rows of polygons (each closed by itself, even-odd inside); an empty list gives no rows. */
export function rowsOf(polygons: readonly (readonly Point[])[]): Rows {
  const points = polygons.flat();
  const left = Math.min(...points.map((p) => p.x));
  const top = Math.min(...points.map((p) => p.y));
  const width = Math.max(...points.map((p) => p.x)) - left;
  const height = Math.max(...points.map((p) => p.y)) - top;
  const rows: Span[][] = Array.from({ length: Math.max(1, Math.ceil(height / ROW_MM)) }, () => []);
  for (const polygon of polygons) {
    const moved = polygon.map((p) => ({ x: p.x - left, y: p.y - top }));
    for (const found of [edgeSpans([closed(moved)], rows.length), insideSpans(moved, rows.length)]) {
      for (const [row, spans] of found.entries()) rows[row]?.push(...spans);
    }
  }
  return { left, top, width, height, rows: rows.map(merged) };
}

/** What lines through points cover in each row, from y = 0 down. */
function edgeSpans(lines: readonly (readonly Point[])[], count: number): readonly Spans[] {
  const rows: Span[][] = Array.from({ length: count }, () => []);
  for (const line of lines) followed(line, [0, count - 1], (row, from, to) => rows[row]?.push([from, to]));
  return rows.map(merged);
}

/** Told what is covered in a row, from x to x. */
export type Covers = (row: number, from: number, to: number) => void;

/** Tells what each stretch of a line covers in each row from one to another. */
export function followed(line: readonly Point[], [top, bottom]: readonly [number, number], covers: Covers): void {
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = ordered(line[i - 1], line[i]);
    if (!a || !b) continue;
    const first = Math.max(top, Math.floor(a.y / ROW_MM));
    const last = Math.min(bottom, Math.floor(b.y / ROW_MM));
    for (let row = first; row <= last; row += 1) {
      const level = a.y === b.y;
      const from = level ? a.x : xAt(a, b, Math.max(a.y, row * ROW_MM));
      const to = level ? b.x : xAt(a, b, Math.min(b.y, (row + 1) * ROW_MM));
      covers(row, Math.min(from, to), Math.max(from, to));
    }
  }
}

const NONE: Spans = [];

/** Where the middle of each row lies inside the polygon (even-odd). */
export function insideSpans(polygon: readonly Point[], count: number): readonly Spans[] {
  const crossings: (number[] | undefined)[] = Array.from({ length: count });
  const line = closed(polygon);
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = ordered(line[i - 1], line[i]);
    if (!a || !b) continue;
    const first = Math.max(0, Math.ceil(a.y / ROW_MM - 0.5));
    for (let row = first; row < count && (row + 0.5) * ROW_MM < b.y; row += 1) {
      const x = xAt(a, b, (row + 0.5) * ROW_MM);
      const known = crossings[row];
      if (known) known.push(x);
      else crossings[row] = [x];
    }
  }
  return crossings.map((xs) => {
    if (!xs) return NONE;
    const sorted = xs.sort((a, b) => a - b);
    return sorted.flatMap((x, i): Span[] => (i % 2 === 1 ? [[sorted[i - 1] ?? x, x]] : []));
  });
}

export function closed(polygon: readonly Point[]): readonly Point[] {
  const [home] = polygon;
  return home ? [...polygon, home] : polygon;
}

function ordered(a: Point | undefined, b: Point | undefined): readonly [Point | undefined, Point | undefined] {
  return a && b && a.y > b.y ? [b, a] : [a, b];
}

function xAt(a: Point, b: Point, y: number): number {
  if (a.y === b.y) return a.x;
  const t = Math.min(Math.max((y - a.y) / (b.y - a.y), 0), 1);
  return a.x + (b.x - a.x) * t;
}
