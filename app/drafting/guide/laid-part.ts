import type { Mm } from '../../body';
import type { Piece, Ref } from '../draft-types';
import {
  add,
  type Bounds,
  mirrorPath,
  type Path,
  type Point,
  pathBounds,
  pointAtLength,
  polyline,
  reversePath,
  transformPath,
} from '../geometry';
import { outlineOf } from '../pieces/outline';

/**
 * A piece ready to be laid in a picture: on the fold unfolded, else turned over where `flipped`. `box` is where it lies by
 * its own axes; `at` puts any path of it where it goes.
 */
export type LaidPart = {
  readonly piece: Piece;
  readonly flipped: boolean;
  readonly outline: Path;
  readonly box: Bounds;
  readonly move: Point;
};

/** A notch's tick, across the edge, mm to either side; and from one tick to the next. */
const TICK_MM = 4;
const APART_MM = 3;

export function laidPart(piece: Piece, flipped: boolean): LaidPart {
  const corners = outlineOf(piece.cutLine, piece.onFold);
  const [first] = corners;
  const ring = polyline(first ? [...corners, first] : []);
  const outline = flipped && !piece.onFold ? mirrorPath(ring) : ring;
  return { piece, flipped: flipped && !piece.onFold, outline, box: pathBounds(outline), move: { x: 0, y: 0 } };
}

export const widthOf = ({ box }: LaidPart): Mm => box.right - box.left;
export const heightOf = ({ box }: LaidPart): Mm => box.bottom - box.top;

/** A piece so much longer than high lies over or under what it is sewn to, and is named beside itself. */
const SLENDER = 3.5;
export const isStripLike = (part: LaidPart): boolean => widthOf(part) > SLENDER * heightOf(part);

/** The part with its box's upper left corner at a place. */
export function movedTo(part: LaidPart, x: Mm, y: Mm): LaidPart {
  return { ...part, move: { x: x - part.box.left, y: y - part.box.top } };
}

/** A path of the piece where the part lies; `other` is its other half, of a piece that lies unfolded. */
export function placed({ flipped, move }: LaidPart, path: Path, other = false): Path {
  const turned = flipped !== other ? mirrorPath(path) : path;
  return transformPath(turned, (p) => add(p, move));
}

/** An edge or line of the piece; empty where it has none of that name. */
export function pathOf({ edges, lines }: Piece, name: string): Path {
  return [...edges, ...lines].find((each) => each.name === name)?.path ?? [];
}

/** The way a seam runs along an edge. */
export function runOf(part: LaidPart, { edge, back }: Ref, other = false): Path {
  const path = placed(part, pathOf(part.piece, edge), other);
  return back ? reversePath(path) : path;
}

/** The ticks of the notches on these edges. */
export function ticksOf(part: LaidPart, edges: readonly string[]): readonly Path[] {
  const halves = part.piece.onFold ? [false, true] : [false];
  return part.piece.notches
    .filter(({ edge }) => edges.includes(edge))
    .flatMap(({ edge, at, ticks }) =>
      halves.flatMap((other) =>
        Array.from({ length: ticks }, (_, index) => {
          const path = placed(part, pathOf(part.piece, edge), other);
          const { point, tangent } = pointAtLength(path, at + (index - (ticks - 1) / 2) * APART_MM);
          const across = { x: -tangent.y * TICK_MM, y: tangent.x * TICK_MM };
          return polyline([add(point, across), { x: point.x - across.x, y: point.y - across.y }]);
        }),
      ),
    );
}

/** How far an arrow reaches to either side where nothing is added to the edge, mm; and its head. */
const LEAST_FOLD_MM = 5;
const HEAD_MM = 3;
/** Edges shorter than this have no room for an arrow. */
const SHORTEST_FOLDED_MM = 16;

/** An arrow over the middle of each of these edges, from what is added to it to where that is folded. */
export function foldsOf(part: LaidPart, edges: readonly string[], other: boolean): readonly Path[] {
  return part.piece.edges
    .filter(({ name, length }) => edges.includes(name) && length >= SHORTEST_FOLDED_MM)
    .flatMap(({ path, length, allowance }) => {
      const { point, tangent } = pointAtLength(path, length / 2);
      const reach = Math.max(allowance, LEAST_FOLD_MM);
      // Clockwise as seen, the piece lies to the right of the way along its edge.
      const by = (inwards: Mm, along: Mm): Point => ({
        x: point.x - tangent.y * inwards + tangent.x * along,
        y: point.y + tangent.x * inwards + tangent.y * along,
      });
      const tip = by(reach, 0);
      return [
        polyline([by(-reach, 0), tip]),
        polyline([by(reach - HEAD_MM, -HEAD_MM), tip, by(reach - HEAD_MM, HEAD_MM)]),
      ].map((arrow) => placed(part, arrow, other));
    });
}
