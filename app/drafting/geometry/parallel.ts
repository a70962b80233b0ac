// The true parallel of a path on its left, as points: offsets along exact normals, never an offset of chords.
// A ring run clockwise as seen has its outside on the left, so a positive distance lies outside it.

import { plainCorner } from './corner';
import { at, type Curve, tangent } from './curve';
import type { Path } from './path';
import { add, cross, left, type Point, scale, subtract } from './point';

/** What chords are cut to, mm, and what is let pass before a chord is cut again: 0.01 mm with what `simplified` adds. */
const AIMED_MM = 0.006;
const PASSED_MM = 0.008;

/** A curve is looked at in this many pieces at first, so that an S is not taken for a straight line. */
const FIRST_PIECES = 4;

/** Cuts of cuts at most; a cusp needs the most. */
const DEEPEST = 6;

/** Chords made of one piece at a time at most. */
const MOST_CHORDS = 16;

/**
 * Points of the parallel `distance` mm to the left of the path, from the normal at its start to the normal at its end,
 * within 0.01 mm. Corners inside the path are mitred outside and cut where the parallels cross inside. Where the path
 * bends away tighter than the distance the parallel folds back over itself, as the true one does. Curves without length
 * are passed over.
 */
export function parallel(path: Path, distance: number): readonly Point[] {
  let points: Point[] = [];
  let before: Curve | undefined;
  for (const curve of path) {
    const direction = tangent(curve, 0);
    if (direction.x === 0 && direction.y === 0) continue;
    const next = curveParallel(curve, distance);
    if (!before) {
      [points, before] = [next, curve];
      continue;
    }
    const arriving = {
      points: points.reverse(),
      beyond: tangent(before, 1),
      allowance: distance,
    };
    const leaving = {
      points: next,
      beyond: scale(direction, -1),
      allowance: distance,
    };
    const joint = plainCorner(curve.from, arriving, leaving);
    points = [...arriving.points.slice(joint.first).reverse(), ...joint.between, ...next.slice(joint.second)];
    before = curve;
  }
  return points;
}

type Sample = {
  readonly t: number;
  readonly point: Point;
  readonly direction: Point;
};

function curveParallel(curve: Curve, distance: number): Point[] {
  const sample = (t: number): Sample => {
    const direction = tangent(curve, t);
    return {
      t,
      direction,
      point: add(at(curve, t), scale(left(direction), distance)),
    };
  };
  let last = sample(0);
  const points = [last.point];
  const pieces = curve.kind === 'line' ? 1 : FIRST_PIECES;
  for (let i = 1; i <= pieces; i += 1) {
    const next = sample(i / pieces);
    addChords(sample, last, next, DEEPEST, points);
    last = next;
  }
  return points;
}

function addChords(sample: (t: number) => Sample, from: Sample, to: Sample, depth: number, points: Point[]): void {
  const strays = strayed(from, to);
  if (strays <= PASSED_MM || depth === 0) {
    points.push(to.point);
    return;
  }
  const chords = Math.min(Math.max(Math.ceil(Math.sqrt(strays / AIMED_MM)), 2), MOST_CHORDS);
  let last = from;
  for (let i = 1; i <= chords; i += 1) {
    const next = i === chords ? to : sample(from.t + ((to.t - from.t) * i) / chords);
    addChords(sample, last, next, depth - 1, points);
    last = next;
  }
}

/** How far a curve strays from its chord, mm: an arc's height is a quarter of chord × angle to the tangent. */
function strayed(from: Sample, to: Sample): number {
  const chord = subtract(to.point, from.point);
  return Math.max(Math.abs(cross(from.direction, chord)), Math.abs(cross(to.direction, chord))) / 4;
}
