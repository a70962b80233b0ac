import type { Draft } from '../../app/drafting/draft-types';
import { type Point, pointAtLength } from '../../app/drafting/geometry';
import { chainsOf } from '../holds/glued/chains';
import { type Half, halvesOf, type Side } from '../holds/glued/halves';
import { gluing, type Hands, handsOf } from '../holds/glued/hands';
import { type OnEdge, type Stitch, stitches } from './meeting';
import { filled, type Triangle } from './triangles';

/** A half of a piece as a mesh: where its points lie on the cloth (as drawn, mm), its triangles, its edges' points in order. */
export type Panel = {
  readonly half: Half;
  readonly points: readonly Point[];
  readonly triangles: readonly Triangle[];
  readonly edges: ReadonlyMap<string, readonly EdgePoint[]>;
  /** Number of its first point in the whole garment. */
  readonly first: number;
};
type EdgePoint = { readonly along: number; readonly point: number };

/** Points of the whole garment that are sewn on each other, or are one in the cloth. */
export type Sewn = { readonly one: number; readonly two: number; readonly seam: string };

export type Panels = {
  readonly panels: readonly Panel[];
  readonly sewn: readonly Sewn[];
  readonly folds: readonly Sewn[];
  readonly hands: Hands;
  readonly count: number;
};

/** What lies on another layer, or is no part of how the garment sits. */
const BESIDE = /facing|binding|lining|pocket|casing|strap|tie|ear-|band|rib|collar|cuff|tab|loop|patch/u;

/** The garment's outer layer, meshed so that both sides of a seam have their points at the same places. */
export function panelsOf(draft: Draft, edge: number): Panels {
  const pieces = draft.pieces.filter(({ name }) => !BESIDE.test(name));
  const here = new Set(pieces.map(({ name }) => name));
  const seams = gluing(draft).filter(({ first, second }) =>
    [...first, ...second].every(({ piece }) => here.has(piece)),
  );
  const halves = halvesOf({ pieces });
  const { hands } = handsOf(seams);
  const { joints } = chainsOf(seams, halves, hands);
  const all = joints.flatMap((joint) => stitches(joint, edge));
  const folded = foldsOf(halves, edge);
  const places = new Map<Side, Map<Half, number[]>>();
  for (const { one, two } of [...all, ...folded]) for (const each of [one, two]) note(each, places, edge);
  let first = 0;
  const panels = halves.map((half): Panel => {
    const panel = meshed(half, places, edge, first);
    first += panel.points.length;
    return panel;
  });
  const find = ({ half, side, along }: OnEdge) => {
    const panel = panels.find((each) => each.half === half);
    const points = panel?.edges.get(side.name) ?? [];
    const nearest = points.reduce((best, each) =>
      Math.abs(each.along - along) < Math.abs(best.along - along) ? each : best,
    );
    return (panel?.first ?? 0) + nearest.point;
  };
  const closed = panels.flatMap((panel) => {
    const other = panels.find(
      ({ half }) => half.piece === panel.half.piece && half.copy === panel.half.copy && half.hand === -1,
    );
    if (panel.half.hand < 0 || !other) return [];
    return closedOf(draft, panel.half, edge).map((place) => ({
      one: panel.first + nearestTo(panel, place),
      two: other.first + nearestTo(other, place),
      seam: 'closure',
    }));
  });
  const points = (stitch: Stitch): Sewn => ({ one: find(stitch.one), two: find(stitch.two), seam: stitch.seam });
  return { panels, sewn: [...all.map(points), ...closed], folds: folded.map(points), hands, count: first };
}

/** Both halves of a piece on the fold are one cloth there. */
function foldsOf(halves: readonly Half[], edge: number): Stitch[] {
  return halves.flatMap((one) => {
    const two = halves.find((each) => each.piece === one.piece && each.copy === one.copy && each.hand === -1);
    if (!one.piece.onFold || one.hand < 0 || !two) return [];
    return one.sides.flatMap((side) => {
      if (side.role !== 'fold') return [];
      return evenly(side.length, edge).map((along) => ({
        one: { half: one, side, along },
        two: { half: two, side, along },
        seam: 'fold',
      }));
    });
  });
}

const evenly = (length: number, edge: number) => {
  const count = Math.max(1, Math.ceil(length / edge));
  return Array.from({ length: count + 1 }, (_, n) => (n * length) / count);
};

function note({ half, side, along }: OnEdge, places: Map<Side, Map<Half, number[]>>, edge: number): void {
  const halves = places.get(side) ?? new Map<Half, number[]>();
  const list = halves.get(half) ?? [0, side.length];
  if (list.every((each) => Math.abs(each - along) > 0.3 * edge || Math.abs(each - along) < 1e-6))
    list.push(...(list.some((each) => Math.abs(each - along) < 1e-6) ? [] : [along]));
  places.set(side, halves.set(half, list));
}

function meshed(
  half: Half,
  places: ReadonlyMap<Side, ReadonlyMap<Half, number[]>>,
  edge: number,
  first: number,
): Panel {
  const outline: Point[] = [];
  const edges = new Map<string, EdgePoint[]>();
  for (const side of half.sides) {
    const noted = places.get(side)?.get(half);
    const alongs = noted ? [...noted].sort((a, b) => a - b) : evenly(side.length, edge);
    edges.set(
      side.name,
      alongs.map((along, n) => ({ along, point: outline.length + n })),
    );
    outline.push(...alongs.slice(0, -1).map((along) => pointAtLength(side.path, along).point));
  }
  const { points, triangles } = filled(outline, centreOf(half, edge), edge);
  // The last edge ends where the first began.
  const round = (list: readonly EdgePoint[]) => list.map((each) => ({ ...each, point: each.point % outline.length }));
  const closed = new Map([...edges].map(([name, list]) => [name, round(list)]));
  return { half, points, triangles, edges: closed, first };
}

/** Places on the line that lies on the other half's when the garment is closed. */
function centreOf({ piece }: Half, edge: number): Point[] {
  const line = piece.lines.find(({ name }) => name === 'centre-line');
  return line ? evenly(line.length, edge).map((along) => pointAtLength(line.path, along).point) : [];
}

/** Those of them that something holds: a square of tape holds no more than it is long, and below it the edges part. */
function closedOf({ notions, seams }: Pick<Draft, 'notions' | 'seams'>, half: Half, edge: number): Point[] {
  const closes = (place: string) =>
    seams.some(({ name, first }) => name === place && first.some(({ piece }) => piece === half.piece.name));
  const square = notions.find(
    ({ kind, place, length, width }) => kind === 'hook-and-loop' && length === width && closes(place),
  );
  const all = centreOf(half, edge);
  return square ? all.slice(0, 1 + Math.ceil(square.length / edge)) : all;
}

function nearestTo({ points }: Panel, place: Point): number {
  const far = points.map(({ x, y }) => Math.hypot(x - place.x, y - place.y));
  return far.indexOf(Math.min(...far));
}
