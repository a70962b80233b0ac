// One piece as ink: cut line, seam line, fold, grain, notches, lines and cuts; its label is set apart.

import type { Say, Unit } from '../../body';
import type { Piece } from '../draft-types';
import { line, mirrorPath, type Path, type Point, scale, subtract, transformPath, unit } from '../geometry';
import { ticks } from '../pieces/ticks';
import { isBare } from '../sheets/forms';
import { wordSide } from '../sheets/marks';
import { arrowHead } from './arrow';
import { edgeWords } from './edge-words';
import { cutOnAxis, foldInk, offFold, pathOnFold } from './fold';
import { type Ink, stroke, type TextWidth } from './ink';
import { lineWordings, type Wording } from './line-words';
import { wordsAlong } from './words-along';

/** Where a piece is drawn, and how: unfolded or as its half, on cloth with a nap or without. */
export type Drawn = {
  readonly piece: Piece;
  readonly whole: boolean;
  readonly nap: boolean;
  readonly to: (p: Point) => Point;
  /** With units, the allowance stands beside each edge's name. */
  readonly units?: Unit;
};

/** A piece's lines, and words clear of them and of what else is drawn there: `beside`. */
export function pieceInk(shown: Drawn, say: Say, widthOf: TextWidth, beside: readonly Ink[] = []): readonly Ink[] {
  const { piece, whole, to } = shown;
  const sides: readonly ((path: Path) => Path)[] = whole && piece.onFold ? [same, mirrorPath] : [same];
  const unfolded = (path: Path): readonly Path[] =>
    (pathOnFold(path) ? [path] : sides.map((side) => side(path))).map((each) => transformPath(each, to));
  const drawn = (
    paths: readonly Path[],
    layer: Ink['layer'],
    pen: 'cut' | 'seam' | 'inner' | 'notch',
  ): readonly Ink[] => paths.flatMap(unfolded).map((path) => stroke(layer, pen, path, !piece.onFold && isRing(path)));
  const ink: Ink[] = [
    ...(isBare(piece) ? [] : drawn(offFold(piece.seamLine, piece.onFold), 'seam', 'seam')),
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
    ...grain(shown),
  ];
  ink.push(...foldInk(shown, [...beside, ...ink], say, widthOf));
  const large = widthOf.print === 'large';
  const told: Wording[] = [];
  for (const wording of wordings(shown, large, say)) {
    const { text, ends, shape } = wording;
    if (told.some((one) => one.text === text && one.shape === shape)) continue;
    const words = wordsAlong(text, [to(ends[0]), to(ends[1])], wordSide(ends, to), [...beside, ...ink], widthOf);
    if (words.length > 0) told.push(wording);
    ink.push(...words);
  }
  if (!large) ink.push(...edgeWords(shown, [...beside, ...ink], say, widthOf));
  return ink;
}

/** The lengthwise thread; with a nap, one head only, the way the nap runs. */
function grain({ piece, nap, to }: Drawn): readonly Ink[] {
  const ends = [to(piece.grain[0]), to(piece.grain[1])] as const;
  const along = unit(subtract(ends[1], ends[0]));
  const back = scale(along, -1);
  return [
    stroke('marks', 'mark', [line(...ends)]),
    stroke('marks', 'mark', arrowHead(ends[1], along)),
    ...(nap ? [] : [stroke('marks', 'mark', arrowHead(ends[0], back))]),
  ];
}

/** No line's shape. */
const GRAIN = -1;

/** What the grain arrow and each straight line inside the piece are called; in large print lines have letters instead. */
function wordings({ piece, nap }: Drawn, large: boolean, say: Say): readonly Wording[] {
  const grainWords = { text: say(nap ? 'label.grain-nap' : 'label.grain'), ends: piece.grain, shape: GRAIN };
  return large ? [grainWords] : [grainWords, ...lineWordings(piece, say)];
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
