import { add, bearing, distance, lerp, moved, type Point, right, scale, subtract } from '../../body/point';
import { across } from './outline';

/** How far a level band is seen to sag, as a share of its half width, and at most: the toy is seen from a little above. */
const SAG = 0.2;
const MOST_SAG = 15;
const POINTS = 12;

/** One half of a band round a part: its two long edges, point by point, from edge of the part to edge. */
export type Half = { readonly above: readonly Point[]; readonly below: readonly Point[] };

/**
 * A band `width` wide round the closed outline, square to the way from `at` to `toward`: the near half, which sags
 * toward `toward`, and the far half. With `toward` straight below, both run from left to right.
 */
export function bandRound(
  outline: readonly Point[],
  at: Point,
  toward: Point,
  width: number,
): { near: Half; far: Half } {
  const ahead = bearing(subtract(toward, at));
  const side = scale(right(ahead), -1);
  const middle = halfAt(outline, at, side);
  const edge = (by: number) => {
    const here = moved(at, ahead, by);
    const found = halfAt(outline, here, side);
    const half = Math.min(Math.max(found.half, 0.72 * middle.half), 1.12 * middle.half);
    const center = moved(here, side, found.offset);
    return (sign: number) => arc(center, scale(side, half), scale(ahead, sign * Math.min(SAG * middle.half, MOST_SAG)));
  };
  const [above, below] = [edge(-width / 2), edge(width / 2)];
  return { near: { above: above(1), below: below(1) }, far: { above: above(-1), below: below(-1) } };
}

/** The line along the middle of a half band. */
export const middleOf = ({ above, below }: Half): Point[] =>
  above.map((here, index) => lerp(here, below[index] ?? here, 0.5));

function halfAt(outline: readonly Point[], at: Point, side: Point) {
  const [from, to] = across(outline, at, side);
  const center = lerp(from, to, 0.5);
  const offset = subtract(center, at);
  return { half: Math.max(distance(from, to) / 2 + 1, 3), offset: offset.x * side.x + offset.y * side.y };
}

function arc(center: Point, half: Point, sag: Point): Point[] {
  return Array.from({ length: POINTS + 1 }, (_, step) => {
    const angle = (Math.PI * step) / POINTS;
    return add(center, add(scale(half, -Math.cos(angle)), scale(sag, Math.sin(angle))));
  });
}
