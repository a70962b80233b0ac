import type { Draft, Edge, Piece } from '../../../app/drafting/draft-types';
import { distance, endTangent, line, type Path, type Point, startTangent } from '../../../app/drafting/geometry';

/** An edge of a half, as the gluing sees it: a fold that is slit is several. Length mm. */
export type Side = {
  readonly name: string;
  readonly role: Edge['role'];
  readonly length: number;
  readonly allowance: number;
  readonly path: Path;
};

/**
 * One half of a piece as it lies on the cloth: drawn (`hand` 1) or mirrored (−1). A piece on the fold is two halves,
 * glued along it; a mirrored pair is two; other copies are all as drawn.
 */
export type Half = {
  readonly piece: Piece;
  readonly copy: number;
  readonly hand: 1 | -1;
  readonly sides: readonly Side[];
};

const ON_FOLD_MM = 1e-6;
const SAME_MM = 0.01;

export function halvesOf({ pieces }: Pick<Draft, 'pieces'>): Half[] {
  return pieces.flatMap((piece) => {
    const sides = piece.edges.flatMap((edge) => (edge.role === 'fold' ? slitFold(edge, piece) : [edge]));
    const half = (copy: number, hand: 1 | -1): Half => ({ piece, copy, hand, sides });
    return Array.from({ length: piece.copies }, (_, copy) => {
      if (piece.onFold) return [half(copy, 1), half(copy, -1)];
      return piece.mirrored ? [half(Math.floor(copy / 2), copy % 2 === 0 ? 1 : -1)] : [half(copy, 1)];
    }).flat();
  });
}

/** Lines along which a piece on the fold is cut open from one half to the other. */
export function slitsOf(piece: Piece): Piece['lines'] {
  const onFold = (path: Path) =>
    path.every(({ from, to }) => Math.abs(from.x) < ON_FOLD_MM && Math.abs(to.x) < ON_FOLD_MM);
  const ends = (path: Path): readonly Point[] => [path[0]?.from, path[path.length - 1]?.to].flatMap((p) => p ?? []);
  const same = (a: Path, b: Path) => ends(a).every((p, n) => distance(p, ends(b)[n] ?? p) < SAME_MM);
  return piece.onFold
    ? piece.lines.filter(({ path }) => onFold(path) && piece.cuts.some((cut) => same(cut, path)))
    : [];
}

/** The fold from its start to its end, its slits sides of their own, named as their lines. */
function slitFold(fold: Edge, piece: Piece): Side[] {
  const [from, to] = [fold.path[0]?.from, fold.path[fold.path.length - 1]?.to];
  if (!from || !to) return [fold];
  const down = Math.sign(to.y - from.y);
  const way = (p: Point) => (p.y - from.y) * down;
  const slits = slitsOf(piece)
    .map(({ name, path }) => {
      const ends = [path[0]?.from, path[path.length - 1]?.to].map((p) => way(p ?? from)).sort((a, b) => a - b);
      return { name, starts: Math.max(ends[0] ?? 0, 0), stops: Math.min(ends[1] ?? 0, fold.length) };
    })
    .sort((a, b) => a.starts - b.starts);
  const sides: Side[] = [];
  let at = 0;
  const add = (name: string, role: Edge['role'], stop: number) => {
    if (stop - at < SAME_MM) return;
    const place = (s: number): Point => ({ x: 0, y: from.y + s * down });
    sides.push({ name, role, length: stop - at, allowance: 0, path: [line(place(at), place(stop))] });
    at = stop;
  };
  slits.forEach(({ name, starts, stops }, n) => {
    add(`${fold.name}~${n}`, 'fold', starts);
    add(name, 'opening', stops);
  });
  add(`${fold.name}~${slits.length}`, 'fold', fold.length);
  return sides;
}

/** Angle inside the piece where a side starts, radians. */
export function angleBefore(sides: readonly Side[], at: number): number {
  const [before, after] = [sides[(at + sides.length - 1) % sides.length], sides[at]];
  if (!before || !after) return Number.NaN;
  const [arriving, leaving] = [endTangent(before.path), startTangent(after.path)];
  return (
    Math.PI -
    Math.atan2(arriving.x * leaving.y - arriving.y * leaving.x, arriving.x * leaving.x + arriving.y * leaving.y)
  );
}
