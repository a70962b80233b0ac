// Whether shapes may lie together in one box: where each of them may be is a cell, halved again and again, and what is an
// overlap wherever in their cells two shapes lie is dropped. What is left proves nothing; where nothing is left, no lay is.

import type { Shape } from './shape';
import type { Stock } from './stock';
import { HEAD, PLANE, type Sums } from './sums';

/** Cells smaller than this share of the box are halved no more. */
const FINEST_SHARE = 0.001;

/** Where a shape may lie: its middle, and how far off that may be along and across. */
type Cell = {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
};

type Size = { readonly width: number; readonly height: number };

/**
 * `apart`: proven that no choice of one shape out of each piece's turns lies in the box without overlaps; `looked`: at how
 * many pairs of cells, no more than `most`. Where it took that many, nothing is proven.
 */
export function together(
  stock: Stock,
  pieces: readonly (readonly number[])[],
  box: Size,
  most: number,
): { readonly apart: boolean; readonly looked: number } {
  const finest = FINEST_SHARE * Math.max(box.width, box.height);
  let looked = 0;
  const clash = (a: Cell, b: Cell): boolean => {
    looked += 1;
    return isWithin(stock.sums(a.shape, b.shape), b.x - a.x, b.y - a.y, a.wide + b.wide, a.high + b.high);
  };
  const may = (cells: readonly Cell[]): boolean => {
    if (looked >= most) return true;
    const at = largest(cells);
    const cell = cells[at];
    if (!cell || Math.max(cell.wide, cell.high) <= finest) return true;
    return halves(cell).some(
      (half) => cells.every((other, index) => index === at || !clash(other, half)) && may(cells.with(at, half)),
    );
  };
  const begun = (cells: readonly Cell[]): boolean => {
    const turns = pieces[cells.length];
    if (!turns) return may(cells);
    return turns.some((shape) => {
      const cell = anywhere(shape, stock.shapes[shape] as Shape, box);
      return cells.every((other) => !clash(other, cell)) && begun([...cells, cell]);
    });
  };
  return { apart: !begun([]), looked };
}

function anywhere(shape: number, { width, height }: Shape, box: Size): Cell {
  const [wide, high] = [Math.max(0, (box.width - width) / 2), Math.max(0, (box.height - height) / 2)];
  return { shape, x: box.width / 2, y: box.height / 2, wide, high };
}

function largest(cells: readonly Cell[]): number {
  const sizes = cells.map(({ wide, high }) => Math.max(wide, high));
  return sizes.indexOf(Math.max(...sizes));
}

function halves(cell: Cell): readonly Cell[] {
  const { x, y, wide, high } = cell;
  return [-0.5, 0.5].map((side) =>
    wide >= high ? { ...cell, x: x + side * wide, wide: wide / 2 } : { ...cell, y: y + side * high, high: high / 2 },
  );
}

/** Whether every shift that is off by no more than `wide` and `high` lies within one and the same of the sums. */
function isWithin(sums: Sums, x: number, y: number, wide: number, high: number): boolean {
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    const boxed =
      x - wide > (sums[at] as number) &&
      x + wide < (sums[at + 2] as number) &&
      y - high > (sums[at + 1] as number) &&
      y + high < (sums[at + 3] as number);
    let plane = boxed ? at + HEAD : Infinity;
    for (; plane < end; plane += PLANE) {
      const [nx, ny] = [sums[plane] as number, sums[plane + 1] as number];
      if (nx * x + ny * y + Math.abs(nx) * wide + Math.abs(ny) * high >= (sums[plane + 2] as number)) break;
    }
    if (plane === end) return true;
    at = end;
  }
  return false;
}
