import type { Point } from '../geometry';
import { blockOutside, emptyBoard, nearestRoom, type Ring, rowsOf } from '../packing';
import type { Cut } from './cuts';

/** Room for a number: the largest a cut has is taken, mm. */
const ROOMS_MM = [24, 10, 4];

/** A number from 1 for each cut: one for each piece of each draft, in their order. */
export function numbersOf(cuts: readonly Cut[]): readonly number[] {
  const kinds = [...new Set(cuts.map(nameOf))];
  return cuts.map((cut) => kinds.indexOf(nameOf(cut)) + 1);
}

const nameOf = ({ draft, piece }: Cut): string => `${draft} ${piece}`;

/** A place on an outline where there is cloth all round, as near to its middle as may be. */
export function spotOn(outline: Ring): Point {
  const { left, top, width, height } = rowsOf([outline]);
  const board = blockOutside(
    emptyBoard(width, height),
    outline.map(({ x, y }) => ({ x: x - left, y: y - top })),
    0,
  );
  const middle = { x: width / 2, y: height / 2 };
  for (const side of ROOMS_MM) {
    const place = nearestRoom(board, side, side, middle);
    if (place) return { x: left + place.x + side / 2, y: top + place.y + side / 2 };
  }
  return { x: left + middle.x, y: top + middle.y };
}
