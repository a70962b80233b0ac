import type { Piece } from '../../app/drafting/draft-types';
import { flatten, type Point } from '../../app/drafting/geometry';
import { inside, toRing } from './near';

/** A line may end on an edge, or lie on one: rounding only. */
const ON_EDGE_MM = 0.02;

/** Lines drawn inside a piece (a pocket's place, a slit, folds) that leave it. */
export function strayLines(piece: Piece): string[] {
  const ring = flatten(piece.seamLine, ON_EDGE_MM / 4);
  const within = (p: Point) => inside(p, ring) || toRing(p, ring) < ON_EDGE_MM;
  return piece.lines
    .filter((line) => !flatten(line.path, 0.5).every(within) || !middles(flatten(line.path, 0.5)).every(within))
    .map((line) => `${piece.name}: line ${line.name} leaves the piece`);
}

/** Off a straight line by so much at most, mm: the edge of an old garment is straight. */
const STRAIGHT_MM = 0.1;

/** Edges that are laid on a finished one and yet bend, or carry an allowance. */
export function bentOnFinished(piece: Piece): string[] {
  return piece.edges
    .filter(({ role }) => role === 'finished')
    .filter(({ path, allowance }) => allowance !== 0 || bend(flatten(path, STRAIGHT_MM / 10)) > STRAIGHT_MM)
    .map(({ name }) => `${piece.name}.${name} cannot lie on a finished edge`);
}

/** How far the farthest point lies from the line between the first and the last, mm. */
function bend(points: readonly Point[]): number {
  const [from, to] = [points[0], points.at(-1)];
  if (!from || !to) return 0;
  const [x, y] = [to.x - from.x, to.y - from.y];
  return Math.max(...points.map((p) => Math.abs((p.x - from.x) * y - (p.y - from.y) * x) / Math.hypot(x, y)));
}

/** A straight line has only two points: its middle is looked at too. */
function middles(points: readonly Point[]): Point[] {
  return points.slice(1).map((to, index) => {
    const from = points[index] ?? to;
    return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  });
}
