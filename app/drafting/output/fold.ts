// Edges with and without the fold: what is cut and sewn, and the mark that says where to fold.

import type { Say } from '../../body';
import type { Piece } from '../draft-types';
import { add, type Curve, distance, end, left, line, type Path, type Point, polyline, scale, start } from '../geometry';
import { FOLD_MARK_MM, hasFoldMark } from '../sheets/marks';
import { arrowHead } from './arrow';
import { centred } from './flow';
import { type Ink, MM_PER_PT, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** On the centre line, within the rounding of output, mm. */
const ON_FOLD_MM = 1e-4;

/** Longest the mark need be, mm. */
const LONGEST_MARK_MM = 110;

/** A ring without its parts on the fold: open runs, or the ring itself where it has none. */
export function offFold(ring: Path, onFold: boolean): readonly Path[] {
  if (!onFold) return [ring];
  const first = ring.findIndex((curve, i) => !liesOnFold(curve) && liesOnFold(ring.at(i - 1) ?? curve));
  if (first < 0) return [ring];
  const runs: Curve[][] = [];
  let run: Curve[] = [];
  for (const curve of [...ring.slice(first), ...ring.slice(0, first)]) {
    if (!liesOnFold(curve)) run.push(curve);
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  return run.length > 0 ? [...runs, run] : runs;
}

/** Whether a path lies along the centre line. */
export function pathOnFold(path: Path): boolean {
  return path.every(liesOnFold);
}

/** Where a piece's edges lie on the centre line without being folded (a slit): the cloth is cut there. */
export function cutOnAxis(piece: Piece): readonly Path[] {
  if (!piece.onFold) return [];
  return piece.edges.filter((edge) => edge.role !== 'fold' && pathOnFold(edge.path)).map((edge) => edge.path);
}

/** The fold line as far as the paper is cut; on a half, arrows pointing at it with words between. */
export function foldInk(
  { piece, whole, to }: { readonly piece: Piece; readonly whole: boolean; readonly to: (p: Point) => Point },
  say: Say,
  widthOf: TextWidth,
): readonly Ink[] {
  return piece.edges
    .filter((edge) => edge.role === 'fold')
    .flatMap(({ path }): readonly Ink[] => {
      const [from, until] = [start(path), end(path)];
      const fold = stroke('marks', 'fold', [line(to(reached(piece, from, until)), to(reached(piece, until, from)))]);
      return whole || !hasFoldMark(piece) ? [fold] : [fold, ...arrows(to(from), to(until), say('label.place-on-fold'), widthOf)];
    });
}

/** An end of a fold edge, moved away from the other end as far as the cut line reaches, unless another edge takes over there. */
function reached(piece: Piece, at: Point, other: Point): Point {
  if (cutOnAxis(piece).some((path) => [start(path), end(path)].some((p) => distance(p, at) <= ON_FOLD_MM))) return at;
  const ys = piece.cutLine.filter((curve) => Math.abs(curve.from.x) <= ON_FOLD_MM).map((curve) => curve.from.y);
  const upwards = at.y < other.y;
  return { x: at.x, y: upwards ? Math.min(at.y, ...ys) : Math.max(at.y, ...ys) };
}

/** Edges run clockwise, so that the piece lies on the right. */
function arrows(from: Point, until: Point, words: string, widthOf: TextWidth): readonly Ink[] {
  const length = distance(from, until);
  const along = scale({ x: until.x - from.x, y: until.y - from.y }, 1 / length);
  const into = scale(left(along), -1);
  const reach = Math.min(length * 0.62, LONGEST_MARK_MM) / 2;
  const middle = add(from, scale(along, length / 2));
  const place = (s: number, deep: number): Point => add(middle, add(scale(along, s), scale(into, deep)));
  const corners = [place(-reach, 0.8), place(-reach, FOLD_MARK_MM), place(reach, FOLD_MARK_MM), place(reach, 0.8)];
  const ink: Ink[] = [
    stroke('marks', 'mark', polyline(corners)),
    ...[-reach, reach].map((s) => stroke('marks', 'mark', arrowHead(place(s, 0.8), scale(into, -1)))),
  ];
  if (widthOf(words, SMALLEST_PT, false) > 2 * reach - 6) return ink;
  const upright = along.x < -ON_FOLD_MM || (Math.abs(along.x) <= ON_FOLD_MM && along.y > 0) ? scale(along, -1) : along;
  const turn = Math.atan2(upright.y, upright.x);
  return [
    ...ink,
    centred(words, place(0, FOLD_MARK_MM / 2 + SMALLEST_PT * MM_PER_PT * 0.04), SMALLEST_PT, false, widthOf, turn),
  ];
}

function liesOnFold(curve: Curve): boolean {
  const points = curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.out, curve.into, curve.to];
  return points.every((p) => Math.abs(p.x) <= ON_FOLD_MM);
}
