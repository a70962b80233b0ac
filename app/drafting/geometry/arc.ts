// Arcs of circles as cubics.

import { add, type Point, point, right, scale, subtract } from '../../body/point';
import { type Curve, cubic } from './curve';
import type { Path } from './path';

/** No piece turns farther, radians (30°): its radius is then true to 4 parts in ten million. */
const WIDEST_PIECE = Math.PI / 6;

/** So that a turn of exactly a whole number of pieces is not cut once more by rounding. */
const ROUNDING = 1e-9;

/**
 * The arc round `centre` from angle `from` to angle `to`, radians from the x axis towards the y axis:
 * clockwise as seen where `to` is the greater, else counter-clockwise.
 */
export function arc(centre: Point, radius: number, from: number, to: number): Path {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / WIDEST_PIECE - ROUNDING));
  const turn = (to - from) / pieces;
  return Array.from({ length: pieces }, (_, i) => piece(centre, radius, from + turn * i, from + turn * (i + 1)));
}

function piece(centre: Point, radius: number, from: number, to: number): Curve {
  const handle = (4 / 3) * Math.tan((to - from) / 4);
  const first = scale(point(Math.cos(from), Math.sin(from)), radius);
  const last = scale(point(Math.cos(to), Math.sin(to)), radius);
  return cubic(
    add(centre, first),
    add(centre, add(first, scale(right(first), handle))),
    add(centre, subtract(last, scale(right(last), handle))),
    add(centre, last),
  );
}
