// Which points of a curve to mark: few, evenly spread, and where the curve meets the ruler's steps.

import type { Mm } from '../../body';
import {
  cross,
  end,
  flatten,
  type Path,
  type Point,
  pathLength,
  pointAtLength,
  splitPath,
  start,
  subtract,
} from '../geometry';
import type { Run } from './runs';

/** In-between points of one curve; a longer one is drawn in two. */
const FEWEST = 3;
const MOST = 5;
/** Straight chords from point to point stray no further from the curve, mm. */
const CHORD_MM = 0.28;
/** A curve shorter than this has one point between its ends, mm. */
const SHORT_MM = 9;
/** A point may move along the curve by this share of the way to the next, to lie nearer the ruler's steps. */
const MOVES = 0.3;
const TRIES = 24;

/** The points of a run, ends included, in as many parts as it takes. `onPaper` is where they lie, `step` what a ruler tells, mm. */
export function marksOn(run: Run, onPaper: (p: Point) => Point, step: Mm): readonly (readonly Point[])[] {
  if (run.kind === 'straight') return [[start(run.path), end(run.path)]];
  const length = pathLength(run.path);
  if (length < SHORT_MM) return [spread(run.path, length, 1, onPaper, step)];
  for (let count = FEWEST; count <= MOST; count++)
    if (chordsStray(run.path, length, count) <= CHORD_MM) return [spread(run.path, length, count, onPaper, step)];
  return splitPath(run.path, length / 2).flatMap((path) => marksOn({ ...run, path }, onPaper, step));
}

function spread(path: Path, length: Mm, count: number, onPaper: (p: Point) => Point, step: Mm): readonly Point[] {
  const apart = length / (count + 1);
  const between = Array.from({ length: count }, (_, n) => meeting(path, apart * (n + 1), apart * MOVES, onPaper, step));
  return [start(path), ...between, end(path)];
}

/** The point near `s` mm along whose place on the ruler's steps lies closest to the curve. */
function meeting(path: Path, s: Mm, room: Mm, onPaper: (p: Point) => Point, step: Mm): Point {
  const tries = Array.from({ length: 2 * TRIES + 1 }, (_, n) => {
    const aside = (n / TRIES - 1) * room;
    const { point, tangent } = pointAtLength(path, s + aside);
    const onto = onPaper(point);
    const told = { x: Math.round(onto.x / step) * step, y: Math.round(onto.y / step) * step };
    const along = subtract(onPaper({ x: point.x + tangent.x, y: point.y + tangent.y }), onto);
    return { point, misses: Math.abs(cross(along, subtract(told, onto))) + (Math.abs(aside) / room) * 0.02 };
  });
  return tries.reduce((found, each) => (each.misses < found.misses ? each : found)).point;
}

/** How far chords between evenly spread points stray from a curve at most, mm. */
function chordsStray(path: Path, length: Mm, count: number): Mm {
  const apart = length / (count + 1);
  return Math.max(
    ...Array.from({ length: count + 1 }, (_, n) => {
      const [, from] = splitPath(path, n * apart);
      const [part] = splitPath(n === 0 ? path : from, apart);
      const [a, b] = [start(part), end(part)];
      const chord = subtract(b, a);
      const long = Math.hypot(chord.x, chord.y);
      return Math.max(...flatten(part, 0.02).map((p) => Math.abs(cross(chord, subtract(p, a))) / long));
    }),
  );
}
