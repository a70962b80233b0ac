// Edges with and without the fold: what is cut and sewn, and the mark that says where to fold.

import type { Say } from '../../body';
import type { Piece } from '../draft-types';
import {
  add,
  type Curve,
  distance,
  end,
  line,
  type Path,
  type Point,
  polyline,
  right,
  scale,
  start,
  subtract,
  unit,
} from '../geometry';
import { foldStretch } from '../sheets/marks';
import { printRooms } from '../sheets/prints';
import { arrowHead } from './arrow';
import { boxRound, crossesAny } from './crossing';
import { centred } from './flow';
import { type Ink, smallestOf, stroke, type TextWidth } from './ink';
import { readingTurn } from './words-along';

/** On the centre line, within the rounding of output, mm. */
const ON_FOLD_MM = 1e-4;

/** The mark takes this share of the fold; its tips stay this far off it, mm; longer it need not be, mm. */
const MARK_SHARE = 0.62;
const TIP_MM = 0.8;
const LONGEST_MARK_MM = 110;

/** Kept between the mark's words and its ends, mm. */
const WORDS_CLEAR_MM = 3;

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

/**
 * The fold line as far as the paper is cut; on a half, arrows pointing at it with words between, where they cross no
 * other `ink` of the piece.
 */
export function foldInk(
  { piece, whole, to }: { readonly piece: Piece; readonly whole: boolean; readonly to: (p: Point) => Point },
  ink: readonly Ink[],
  say: Say,
  widthOf: TextWidth,
): readonly Ink[] {
  const folds = piece.edges.filter((edge) => edge.role === 'fold');
  return folds.flatMap((edge): readonly Ink[] => {
    const [from, until] = [start(edge.path), end(edge.path)];
    const fold = stroke('marks', 'fold', [line(to(reached(piece, from, until)), to(reached(piece, until, from)))]);
    const stretch = whole ? undefined : foldStretch(piece, edge, widthOf.print);
    return stretch ? [fold, ...arrows(stretch.map(to), say('label.place-on-fold'), ink, widthOf)] : [fold];
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
function arrows(
  [from, until]: readonly Point[],
  words: string,
  ink: readonly Ink[],
  widthOf: TextWidth,
): readonly Ink[] {
  if (!from || !until) return [];
  const length = distance(from, until);
  const deep = printRooms[widthOf.print ?? 'usual'].foldMark;
  const size = smallestOf(widthOf);
  const along = unit(subtract(until, from));
  const into = right(along);
  const reach = Math.min(length * MARK_SHARE, LONGEST_MARK_MM) / 2;
  const middle = scale(add(from, until), 0.5);
  const place = (s: number, off: number): Point => add(middle, add(scale(along, s), scale(into, off)));
  const tips = [place(-reach, TIP_MM), place(reach, TIP_MM)] as const;
  const back = [place(-reach, deep), place(reach, deep)] as const;
  const corners = [tips[0], ...back, tips[1]];
  if (crossesAny(corners, ink, widthOf)) return [];
  const mark: readonly Ink[] = [
    stroke('marks', 'mark', polyline(corners)),
    ...tips.map((tip) => stroke('marks', 'mark', arrowHead(tip, scale(into, -1)))),
  ];
  const half = widthOf(words, size, false) / 2;
  const [turn, slack] = [readingTurn(from, until), reach - WORDS_CLEAR_MM - half];
  const at = slack < 0 ? [] : [0, -slack / 2, slack / 2].map((aside) => place(aside, deep / 2));
  const free = at.find((each) => !crossesAny(boxRound(each, half, size, turn), ink, widthOf));
  return free ? [...mark, centred(words, free, size, false, widthOf, turn)] : mark;
}

function liesOnFold(curve: Curve): boolean {
  const points = curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.out, curve.into, curve.to];
  return points.every((p) => Math.abs(p.x) <= ON_FOLD_MM);
}
