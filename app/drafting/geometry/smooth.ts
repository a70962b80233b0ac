// Cubics shaped by the directions at their ends. Directions are those of travel, one long, at both ends.

import { add, cross, distance, type Point, scale, subtract } from '../../body/point';
import { type Cubic, cubic } from './curve';

/** Handle of a quarter circle as a share of its radius, 4/3·(√2 − 1) = 0.5523: true to 0.027 % of the radius. */
export const QUARTER_HANDLE = (4 / 3) * (Math.SQRT2 - 1);

/** A quarter circle's handle as a share of its chord: for ends whose tangents do not meet between them. */
const CHORD_HANDLE = QUARTER_HANDLE / Math.SQRT2;

/** Tangents that turn less than this, as a sine, do not meet anywhere useful. */
const PARALLEL = 1e-9;

/** A cubic that leaves and arrives along given directions, its handles as shares of the chord's length. */
export function hermite(
  from: Point,
  fromDirection: Point,
  to: Point,
  toDirection: Point,
  outShare: number,
  intoShare: number,
): Cubic {
  const chord = distance(from, to);
  return cubic(
    from,
    add(from, scale(fromDirection, outShare * chord)),
    subtract(to, scale(toDirection, intoShare * chord)),
    to,
  );
}

/**
 * A quarter of an ellipse, aslant if need be: handles 0.5523 of the way to where the end tangents meet.
 * Where they do not meet ahead of the start and behind the end, the handles are 0.39 of the chord.
 */
export function ellipseQuarter(from: Point, fromDirection: Point, to: Point, toDirection: Point): Cubic {
  const turn = cross(fromDirection, toDirection);
  const chord = subtract(to, from);
  const ahead = cross(chord, toDirection) / turn;
  const behind = cross(fromDirection, chord) / turn;
  if (Math.abs(turn) < PARALLEL || !(ahead > 0) || !(behind > 0)) {
    return hermite(from, fromDirection, to, toDirection, CHORD_HANDLE, CHORD_HANDLE);
  }
  return cubic(
    from,
    add(from, scale(fromDirection, QUARTER_HANDLE * ahead)),
    subtract(to, scale(toDirection, QUARTER_HANDLE * behind)),
    to,
  );
}
