import type { Mm } from '../../body';
import type { Adjustment, Edge, Piece } from '../draft-types';
import {
  distance,
  dot,
  end as endOf,
  type Path,
  type Point,
  pathLength,
  pointAtLength,
  start,
  subtract,
  transformPath,
} from '../geometry';

/** Which choice ends which piece of a pair sooner, at which edge, between which seams. */
const rows = [
  { choice: 'shorterSleeve', piece: 'sleeve', end: 'cuff', beside: ['back-underarm', 'front-underarm'] },
  { choice: 'shorterLeg', piece: 'leg', end: 'hem', beside: ['back-inseam', 'front-inseam'] },
] as const;

/** So much of a seam beside is left, whatever was asked (share). */
const MOST_SHARE = 0.6;

/** Less than this no tape tells, mm. */
const LEAST_MM = 1;

type Choices = Readonly<Record<string, string | boolean | number>>;
type Shortened = { readonly pieces: readonly Piece[]; readonly adjustments: readonly Adjustment[] };

/**
 * Limbs of two lengths: the piece of the pair is drawn for the longer one, with a line where the shorter one's finished
 * edge lies. Only what ends in a hem, or as it is cut, can end sooner.
 */
export function withShorter(pieces: readonly Piece[], choices: Choices): Shortened {
  const adjustments: Adjustment[] = [];
  const marked = pieces.map((piece) => {
    const row = rows.find((each) => each.piece === piece.name);
    const wanted = Number(row ? (choices[row.choice] ?? 0) : 0);
    const [end, ...seams] = row ? [row.end, ...row.beside].map((name) => edgeOf(piece, name)) : [];
    const [one, two] = seams;
    if (wanted < LEAST_MM || !end || !one || !two || (end.role !== 'hem' && end.role !== 'edge')) return piece;
    const by = Math.min(wanted, MOST_SHARE * one.length, MOST_SHARE * two.length);
    adjustments.push({ code: `${piece.name}-one-shorter`, by, because: 'limbs-differ', check: [] });
    const path = between(end.path, upFrom(end, one, by), upFrom(end, two, by));
    return { ...piece, lines: [...piece.lines, { name: 'shorter-end', length: pathLength(path), path }] };
  });
  return { pieces: marked, adjustments };
}

const edgeOf = ({ edges }: Piece, name: string): Edge | undefined => edges.find((each) => each.name === name);

/** The end itself, moved so that it runs between two places, whichever lies at which of its ends: it stays as round as it is. */
function between(path: Path, one: Point, two: Point): Path {
  const [from, to] = [start(path), endOf(path)];
  const [a, b] = distance(from, one) < distance(from, two) ? [one, two] : [two, one];
  const [was, is] = [subtract(to, from), subtract(b, a)];
  const square = dot(was, was);
  const [along, across] = [dot(is, was) / square, (is.y * was.x - is.x * was.y) / square];
  return transformPath(path, (p) => {
    const { x, y } = subtract(p, from);
    return { x: a.x + x * along - y * across, y: a.y + x * across + y * along };
  });
}

/** The place so far along a seam from where it meets an end. */
function upFrom({ path: end }: Edge, { path: seam }: Edge, by: Mm): Point {
  const near = (p: Point): Mm => Math.min(distance(p, start(end)), distance(p, endOf(end)));
  return at(seam, near(start(seam)) < near(endOf(seam)) ? by : pathLength(seam) - by);
}

const at = (path: Path, way: Mm): Point => pointAtLength(path, way).point;
