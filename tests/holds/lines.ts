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

/** A straight line has only two points: its middle is looked at too. */
function middles(points: readonly Point[]): Point[] {
  return points.slice(1).map((to, index) => {
    const from = points[index] ?? to;
    return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  });
}
