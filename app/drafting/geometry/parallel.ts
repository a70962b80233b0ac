// The true parallel of a path on its left, as points: offsets along exact normals, never an offset of chords.
// A ring run clockwise as seen has its outside on the left, so a positive distance lies outside it.

import { add, cross, distance, left, norm, type Point, scale, subtract } from '../../body/point';
import { plainCorner } from './corner';
import { at, type Curve, curvature, tangent } from './curve';
import type { Path } from './path';

/** How far chords stray, mm: 0.01 mm with what `simplified` adds. On the path itself a chord must not cut into the piece. */
const STRAYS_MM = 0.008;
const STRAYS_ON_PATH_MM = 0.001;

/** Chords are aimed a little finer than they must be, so that few have to be cut again. */
const AIM = 0.75;

/** A curve is looked at in this many pieces at first, so that an S is not taken for a straight line. */
const FIRST_PIECES = 4;

/** Where the parallel turns back on itself its tip is found this closely, mm, or a crossing close to it would be missed. */
const TIP_MM = 0.002;

/** Cuts of cuts at most; a tip needs the most. */
const DEEPEST = 10;

/** Chords made of one piece at a time at most. */
const MOST_CHORDS = 16;

/**
 * Points of the parallel `away` mm to the left of the path, from the normal at its start to the normal at its end,
 * within 0.01 mm. Corners inside the path are mitred outside and cut where the parallels cross inside. Where the path
 * bends away tighter than the distance the parallel folds back over itself, as the true one does. Curves without length
 * are passed over.
 */
export function parallel(path: Path, away: number): readonly Point[] {
  let points: Point[] = [];
  let before: Curve | undefined;
  for (const curve of path) {
    const direction = tangent(curve, 0);
    if (norm(direction) === 0) continue;
    const next = curveParallel(curve, away);
    if (before) {
      const arriving = { points: points.reverse(), beyond: tangent(before, 1), allowance: away };
      const leaving = { points: next, beyond: scale(direction, -1), allowance: away };
      const joint = plainCorner(curve.from, arriving, leaving);
      points = [...points.slice(joint.first).reverse(), ...joint.between, ...next.slice(joint.second)];
    } else points = next;
    before = curve;
  }
  return points;
}

type Sample = {
  readonly t: number;
  readonly point: Point;
  /** The curve's own direction of travel. */
  readonly direction: Point;
  /** Whether the parallel travels the same way here: not where the curve bends away tighter than the distance. */
  readonly forward: boolean;
};

type Sampled = { readonly sample: (t: number) => Sample; readonly strays: number; readonly points: Point[] };

function curveParallel(curve: Curve, away: number): Point[] {
  const sample = (t: number): Sample => {
    const direction = tangent(curve, t);
    const point = add(at(curve, t), scale(left(direction), away));
    return { t, direction, point, forward: away * curvature(curve, t) > -1 };
  };
  let last = sample(0);
  const sampled = { sample, strays: away === 0 ? STRAYS_ON_PATH_MM : STRAYS_MM, points: [last.point] };
  const pieces = curve.kind === 'line' ? 1 : FIRST_PIECES;
  for (let i = 1; i <= pieces; i += 1) {
    const next = sample(i / pieces);
    addChords(sampled, last, next, DEEPEST);
    last = next;
  }
  return sampled.points;
}

function addChords(sampled: Sampled, from: Sample, to: Sample, depth: number): void {
  const strays = strayed(from, to);
  const turnsBack = from.forward !== to.forward && distance(from.point, to.point) > TIP_MM;
  if ((strays <= sampled.strays && !turnsBack) || depth === 0) {
    sampled.points.push(to.point);
    return;
  }
  const wanted = Math.ceil(Math.sqrt(strays / (AIM * sampled.strays)));
  const chords = Math.min(Math.max(wanted, 2), MOST_CHORDS);
  let last = from;
  for (let i = 1; i <= chords; i += 1) {
    const next = i === chords ? to : sampled.sample(from.t + ((to.t - from.t) * i) / chords);
    addChords(sampled, last, next, depth - 1);
    last = next;
  }
}

/** How far a curve strays from its chord, mm: an arc's height is a quarter of chord × angle to the tangent. */
function strayed(from: Sample, to: Sample): number {
  const chord = subtract(to.point, from.point);
  return Math.max(Math.abs(cross(from.direction, chord)), Math.abs(cross(to.direction, chord))) / 4;
}
