// A path as a hand with a ruler sees it: straight runs and smooth curved ones.

import type { Mm } from '../../body';
import {
  angleBetween,
  type Curve,
  distance,
  end,
  endTangent,
  flatten,
  line,
  type Path,
  type Point,
  start,
  startTangent,
} from '../geometry';

export type Run = { readonly kind: 'straight' | 'curve'; readonly path: Path };

/** A curve that strays no further from its chord is drawn with the ruler, mm. */
const STRAIGHT_MM = 0.12;
/** Runs that meet at less than this go on smoothly, radians: two degrees. */
const SMOOTH = 0.035;

export function runsOf(path: Path): readonly Run[] {
  const runs: Run[] = [];
  for (const curve of path) {
    const own: Run = { kind: strays([curve]) <= STRAIGHT_MM ? 'straight' : 'curve', path: [curve] };
    const before = runs.at(-1);
    const both = before && [...before.path, ...own.path];
    const goesOn =
      before &&
      both &&
      before.kind === own.kind &&
      angleBetween(endTangent(before.path), startTangent(own.path)) < SMOOTH;
    if (goesOn && (own.kind === 'curve' || strays(both) <= STRAIGHT_MM))
      runs[runs.length - 1] = { kind: own.kind, path: both };
    else runs.push(own);
  }
  return runs.map((run) => (run.kind === 'straight' ? { ...run, path: [chord(run.path)] } : run));
}

/** Where runs begin and end. */
export function cornersIn(path: Path): readonly Point[] {
  return runsOf(path).flatMap((run) => [start(run.path), end(run.path)]);
}

const chord = (path: Path): Curve => line(start(path), end(path));

/** How far a path strays from its chord, mm. */
function strays(path: Path): Mm {
  const [from, to] = [start(path), end(path)];
  const long = distance(from, to);
  const off = (p: Point): Mm =>
    long > 0 ? Math.abs((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)) / long : distance(p, from);
  return Math.max(...flatten(path, STRAIGHT_MM / 4).map(off));
}
