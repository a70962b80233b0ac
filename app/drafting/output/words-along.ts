import { add, distance, type Point, scale, subtract, unit } from '../geometry';
import { centred } from './flow';
import { MM_PER_PT, SMALLEST_PT, type TextWidth, type Words } from './ink';

/** From a line to the middle of the words beside it, as a share of their size. */
const BESIDE_SHARE = 0.8;

/** Directions this near to upright read upwards. */
const UPRIGHT = 1e-6;

/** Words in small print along a straight stretch, on the side given (one long), never upside down; none where it is too short. */
export function wordsAlong(
  text: string,
  [from, until]: readonly [Point, Point],
  side: Point,
  widthOf: TextWidth,
): readonly Words[] {
  if (widthOf(text, SMALLEST_PT, false) >= distance(from, until)) return [];
  const middle = add(scale(add(from, until), 0.5), scale(side, SMALLEST_PT * MM_PER_PT * BESIDE_SHARE));
  return [centred(text, middle, SMALLEST_PT, false, widthOf, readingTurn(from, until))];
}

/** The turn, in radians, that lets words along a stretch be read: from left to right, or upwards. */
export function readingTurn(from: Point, until: Point): number {
  const along = unit(subtract(until, from));
  const backwards = along.x < -UPRIGHT || (Math.abs(along.x) <= UPRIGHT && along.y > 0);
  const reading = backwards ? scale(along, -1) : along;
  return Math.atan2(reading.y, reading.x);
}
