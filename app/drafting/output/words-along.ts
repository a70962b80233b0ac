import { add, distance, lerp, type Point, scale, subtract, unit } from '../geometry';
import { boxRound, crossesAny } from './crossing';
import { centred } from './flow';
import { type Ink, MM_PER_PT, smallestOf, type TextWidth, type Words } from './ink';

/** From a line to the middle of the words beside it, as a share of their size. */
const BESIDE_SHARE = 0.8;

/** Directions this near to upright read upwards. */
const UPRIGHT = 1e-6;

/** Where along the line words may stand, as shares of its length, the best first. */
const PLACES = [0.5, 0.35, 0.65, 0.2, 0.8];

/**
 * Words as small as they may be along a straight stretch, on the side given (one long), clear of other ink and never upside
 * down; none where there is no room.
 */
export function wordsAlong(
  text: string,
  [from, until]: readonly [Point, Point],
  side: Point,
  ink: readonly Ink[],
  widthOf: TextWidth,
): readonly Words[] {
  const length = distance(from, until);
  const size = smallestOf(widthOf);
  const half = widthOf(text, size, false) / 2;
  const turn = readingTurn(from, until);
  for (const share of PLACES) {
    if (Math.min(share, 1 - share) * length < half) continue;
    const middle = add(lerp(from, until, share), scale(side, size * MM_PER_PT * BESIDE_SHARE));
    const words = centred(text, middle, size, false, widthOf, turn);
    if (!crossesAny(boxRound(middle, half, size, turn), ink, widthOf)) return [words];
  }
  return [];
}

/** The turn, in radians, that lets words along a stretch be read: from left to right, or upwards. */
export function readingTurn(from: Point, until: Point): number {
  const along = unit(subtract(until, from));
  const backwards = along.x < -UPRIGHT || (Math.abs(along.x) <= UPRIGHT && along.y > 0);
  const reading = backwards ? scale(along, -1) : along;
  return Math.atan2(reading.y, reading.x);
}
