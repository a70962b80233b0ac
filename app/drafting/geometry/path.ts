// Paths: curves one after another, each starting where the last ended. Distances along a path are mm from its start.
// A ring is a path whose end meets its start; clockwise as seen unless said otherwise.

import type { Point } from '../../body/point';
import { at, type Curve, line, reverse, split, tangent, transformCurve } from './curve';
import { curveLength, paramAtLength } from './length';

export type Path = readonly Curve[];

/** A cut nearer than this to a joint is made at the joint, mm: no curve too short to have a direction is left over. */
const JOINT_MM = 1e-7;

export function pathLength(path: Path): number {
  return path.reduce((sum, curve) => sum + curveLength(curve), 0);
}

/** The same path run from its end to its start. */
export function reversePath(path: Path): Path {
  return path.map(reverse).reverse();
}

/** The path moved by an affine map. */
export function transformPath(path: Path, f: (p: Point) => Point): Path {
  return path.map((curve) => transformCurve(curve, f));
}

export function translatePath(path: Path, dx: number, dy: number): Path {
  return transformPath(path, (p) => ({ x: p.x + dx, y: p.y + dy }));
}

/** Mirrors over the centre line, x to −x. Not reversed: a clockwise ring becomes counter-clockwise. */
export function mirrorPath(path: Path): Path {
  return transformPath(path, (p) => ({ x: 0 - p.x, y: p.y }));
}

/** Straight lines through the points in order; repeated points are passed over. */
export function polyline(points: readonly Point[]): Path {
  const lines: Curve[] = [];
  let last: Point | undefined;
  for (const p of points) {
    if (last && (last.x !== p.x || last.y !== p.y)) lines.push(line(last, p));
    last = p;
  }
  return lines;
}

/** Where the path starts. @throws RangeError on an empty path */
export function start(path: Path): Point {
  return first(path).from;
}

/** Where the path ends. @throws RangeError on an empty path */
export function end(path: Path): Point {
  return last(path).to;
}

/** The direction of travel at the start, one long. @throws RangeError on an empty path */
export function startTangent(path: Path): Point {
  return tangent(first(path), 0);
}

/** The direction of travel at the end, one long. @throws RangeError on an empty path */
export function endTangent(path: Path): Point {
  return tangent(last(path), 1);
}

/** The place and direction s mm along; s is held to the path. @throws RangeError on an empty path */
export function pointAtLength(path: Path, s: number): { readonly point: Point; readonly tangent: Point } {
  let rest = Math.max(s, 0);
  for (const curve of path) {
    const length = curveLength(curve);
    if (rest <= length) {
      const t = paramAtLength(curve, rest);
      return { point: at(curve, t), tangent: tangent(curve, t) };
    }
    rest -= length;
  }
  return { point: end(path), tangent: endTangent(path) };
}

/** The path before and after s mm; one of the two is empty where s is at or past an end. */
export function splitPath(path: Path, s: number): [Path, Path] {
  let rest = s;
  for (const [index, curve] of path.entries()) {
    if (rest <= JOINT_MM) return [path.slice(0, index), path.slice(index)];
    const length = curveLength(curve);
    if (rest < length - JOINT_MM) {
      const [before, after] = split(curve, paramAtLength(curve, rest));
      return [
        [...path.slice(0, index), before],
        [after, ...path.slice(index + 1)],
      ];
    }
    rest -= length;
  }
  return [path, []];
}

function first(path: Path): Curve {
  const curve = path[0];
  if (!curve) throw new RangeError('empty-path');
  return curve;
}

function last(path: Path): Curve {
  const curve = path[path.length - 1];
  if (!curve) throw new RangeError('empty-path');
  return curve;
}
