import { add, cross, distance, flatten, lerp, type Point, rotate, scale, subtract, unit } from '../geometry';
import { centred } from './flow';
import { type Ink, MM_PER_PT, SMALLEST_PT, type TextWidth, type Words } from './ink';

/** From a line to the middle of the words beside it, as a share of their size. */
const BESIDE_SHARE = 0.8;

/** Directions this near to upright read upwards. */
const UPRIGHT = 1e-6;

/** Where along the line words may stand, as shares of its length, the best first. */
const PLACES = [0.5, 0.35, 0.65, 0.2, 0.8];

/** How closely lines are followed when words look for room among them, mm; what words reach above and below their middle. */
const FOLLOWED_MM = 0.2;
const HALF_HEIGHT_MM = SMALLEST_PT * MM_PER_PT * 0.5;

/**
 * Words in small print along a straight stretch, on the side given (one long), clear of other ink and never upside
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
  const half = widthOf(text, SMALLEST_PT, false) / 2;
  const turn = readingTurn(from, until);
  const lines = ink.map((each) => outlineOf(each, widthOf));
  for (const share of PLACES) {
    if (Math.min(share, 1 - share) * length < half) continue;
    const middle = add(lerp(from, until, share), scale(side, SMALLEST_PT * MM_PER_PT * BESIDE_SHARE));
    const words = centred(text, middle, SMALLEST_PT, false, widthOf, turn);
    const ring = boxRound(middle, half, turn);
    if (!lines.some((line) => meet(ring, line))) return [words];
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

/** What words must not cross: a line, or the box round other words. */
function outlineOf(ink: Ink, widthOf: TextWidth): readonly Point[] {
  if (ink.kind !== 'words') return flatten(ink.path, FOLLOWED_MM);
  const half = widthOf(ink.text, ink.size, ink.bold) / 2;
  const middle = add(ink.at, rotate({ x: half, y: -HALF_HEIGHT_MM }, ink.turn));
  return boxRound(middle, half, ink.turn);
}

function boxRound(middle: Point, half: number, turn: number): readonly Point[] {
  const corners = [
    { x: -half, y: -HALF_HEIGHT_MM },
    { x: half, y: -HALF_HEIGHT_MM },
    { x: half, y: HALF_HEIGHT_MM },
    { x: -half, y: HALF_HEIGHT_MM },
    { x: -half, y: -HALF_HEIGHT_MM },
  ];
  return corners.map((corner) => add(middle, rotate(corner, turn)));
}

/** Whether two lines of points cross anywhere. */
function meet(ring: readonly Point[], line: readonly Point[]): boolean {
  return line.some((b, i) => {
    const a = line[i - 1];
    return (
      a !== undefined &&
      ring.some((d, j) => {
        const c = ring[j - 1];
        return c !== undefined && side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
      })
    );
  });
}

function side(a: Point, b: Point, p: Point): number {
  return cross(subtract(b, a), subtract(p, a));
}
