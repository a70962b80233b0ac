import type { Point } from '../../body/point';
import type { Box, Frame } from './drawing';

/** How finely the picture is looked at when a place for words is sought, in frame units. */
const CELL = 5;

/** Says what share of a box the figure covers, 0 to 1. */
export type Crowd = (box: Box) => number;

/** Looks at the closed outlines of a figure once, line by line, and answers for any box after that. */
export function crowdOf(frame: Frame, outlines: readonly (readonly Point[])[]): Crowd {
  const [columns, rows] = [Math.ceil(frame.width / CELL), Math.ceil(frame.height / CELL)];
  const covered = Array.from({ length: rows }, (_, row) => rowOf(outlines, (row + 0.5) * CELL, columns));
  return ({ left, top, right, bottom }) => {
    let [full, all] = [0, 0];
    for (let row = Math.floor(top / CELL); row * CELL < bottom; row++) {
      for (let column = Math.floor(left / CELL); column * CELL < right; column++) {
        all += 1;
        if (covered[row]?.[column]) full += 1;
      }
    }
    return all > 0 ? full / all : 0;
  };
}

function rowOf(outlines: readonly (readonly Point[])[], y: number, columns: number): boolean[] {
  const row: boolean[] = new Array(columns).fill(false);
  for (const outline of outlines) {
    const cuts = cutsOf(outline, y);
    for (let index = 0; index + 1 < cuts.length; index += 2) {
      const from = Math.max(Math.floor((cuts[index] ?? 0) / CELL), 0);
      const to = Math.min(Math.floor((cuts[index + 1] ?? 0) / CELL), columns - 1);
      for (let column = from; column <= to; column++) row[column] = true;
    }
  }
  return row;
}

function cutsOf(outline: readonly Point[], y: number): number[] {
  const cuts: number[] = [];
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    if (a.y > y !== b.y > y) cuts.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  });
  return cuts.sort((a, b) => a - b);
}
