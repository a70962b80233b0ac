// One piece as ink: cut line, seam line, fold, grain, notches, lines and cuts; its label is set apart.

import type { Mm, Say } from '../../body';
import type { Edge, Notch, Piece } from '../draft-types';
import {
  add,
  left,
  line,
  mirrorPath,
  type Path,
  type Point,
  pointAtLength,
  scale,
  subtract,
  transformPath,
  unit,
} from '../geometry';
import { grainSide } from '../sheets/marks';
import { arrowHead } from './arrow';
import { centred } from './flow';
import { cutOnAxis, foldInk, offFold, pathOnFold } from './fold';
import { type Ink, MM_PER_PT, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** Where a piece is drawn, and how: unfolded or as its half, on cloth with a nap or without. */
export type Drawn = {
  readonly piece: Piece;
  readonly whole: boolean;
  readonly nap: boolean;
  readonly to: (p: Point) => Point;
};

/** Length of a notch where there is no allowance to cross, mm; then it lies inside. */
const INNER_NOTCH_MM = 4;

/** Between the two ticks of a back notch, mm. */
const TICKS_APART_MM = 2.5;

export function pieceInk({ piece, whole, nap, to }: Drawn, say: Say, widthOf: TextWidth): readonly Ink[] {
  const sides: readonly ((path: Path) => Path)[] = whole && piece.onFold ? [same, mirrorPath] : [same];
  const unfolded = (path: Path): readonly Path[] =>
    (pathOnFold(path) ? [path] : sides.map((side) => side(path))).map((each) => transformPath(each, to));
  const drawn = (
    paths: readonly Path[],
    layer: Ink['layer'],
    pen: 'cut' | 'seam' | 'inner' | 'notch',
  ): readonly Ink[] => paths.flatMap(unfolded).map((path) => stroke(layer, pen, path, !piece.onFold && isRing(path)));
  return [
    ...drawn(offFold(piece.seamLine, piece.onFold), 'seam', 'seam'),
    ...drawn(offFold(piece.cutLine, piece.onFold), 'cut', 'cut'),
    ...drawn(
      piece.lines.map((inner) => inner.path).filter((path) => !isCut(piece, path)),
      'marks',
      'inner',
    ),
    ...drawn([...piece.cuts, ...cutOnAxis(piece)], 'cut', 'cut'),
    ...drawn(
      piece.notches.flatMap((notch) => ticks(piece, notch)),
      'marks',
      'notch',
    ),
    ...foldInk({ piece, whole, to }, say, widthOf),
    ...grain(piece, nap, to, say, widthOf),
  ];
}

/** Every tick of every notch: from the seam line out to the cut line, where scissors snip. */
function ticks(piece: Piece, notch: Notch): readonly Path[] {
  const edge = piece.edges.find((each) => each.name === notch.edge);
  if (!edge) return [];
  const offsets = notch.ticks === 1 ? [0] : [-TICKS_APART_MM / 2, TICKS_APART_MM / 2];
  return offsets.map((offset) => tick(edge, notch.at + offset));
}

function tick({ path, allowance }: Edge, at: Mm): Path {
  const { point, tangent } = pointAtLength(path, at);
  const outward = left(tangent);
  return [line(point, add(point, scale(outward, allowance > 0 ? allowance : -INNER_NOTCH_MM)))];
}

/** The lengthwise thread; with a nap, one head only, the way the nap runs. */
function grain(piece: Piece, nap: boolean, to: (p: Point) => Point, say: Say, widthOf: TextWidth): readonly Ink[] {
  const [from, until] = [to(piece.grain[0]), to(piece.grain[1])];
  const along = unit(subtract(until, from));
  const reading = along.x < -1e-6 || (Math.abs(along.x) <= 1e-6 && along.y > 0) ? scale(along, -1) : along;
  const middle = scale(add(from, until), 0.5);
  const beside = add(middle, scale(grainSide(piece, to), SMALLEST_PT * MM_PER_PT * 0.8));
  const words = say(nap ? 'label.grain-nap' : 'label.grain');
  const fits = widthOf(words, SMALLEST_PT, false) < Math.hypot(until.x - from.x, until.y - from.y);
  const turn = Math.atan2(reading.y, reading.x);
  return [
    stroke('marks', 'mark', [line(from, until)]),
    stroke('marks', 'mark', arrowHead(until, along)),
    ...(nap ? [] : [stroke('marks', 'mark', arrowHead(from, scale(along, -1)))]),
    ...(fits ? [centred(words, beside, SMALLEST_PT, false, widthOf, turn)] : []),
  ];
}

/** A line along which the piece is cut open is drawn as a cut. */
function isCut(piece: Piece, path: Path): boolean {
  return piece.cuts.some((cut) => cut.length === path.length && cut.every((curve, i) => curve === path[i]));
}

function isRing(path: Path): boolean {
  const [first] = path;
  const last = path[path.length - 1];
  return first !== undefined && last !== undefined && first.from.x === last.to.x && first.from.y === last.to.y;
}

function same(path: Path): Path {
  return path;
}
