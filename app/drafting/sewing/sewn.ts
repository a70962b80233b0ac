import type { Ref, Seam } from '../draft-types';
import { neighbour } from '../drawing/chain';
import type { Drawing } from '../drawing/draw';

/** One side of a seam, as the order of sewing sees it; edges are named `piece.edge`. */
export type SewnChain = {
  /** The edges beside its two ends. */
  readonly ends: readonly [string, string];
  /** The two edges that meet wherever it passes from one piece to the next. */
  readonly joints: readonly (readonly [string, string])[];
  /** Its own edges and those beside them. */
  readonly around: readonly string[];
  /** The piece on the other side of the seam. */
  readonly across: string | undefined;
};

/** A seam with all that the order of sewing asks about it, looked up once. */
export type Sewn = {
  readonly seam: Seam;
  readonly first: ReadonlySet<string>;
  readonly second: ReadonlySet<string>;
  readonly chains: readonly SewnChain[];
  readonly pieces: readonly string[];
  /** Turned back, or stitched down over a seam that is there already. */
  readonly finishes: boolean;
  /** Stitched on a line inside a piece, as a pocket is. */
  readonly inside: boolean;
  /** Two lines of one piece, or two edges that meet in a point, sewn to each other: before anything else is laid on it. */
  readonly dart: boolean;
  /** Edges turned on themselves that are folded before what is sewn over their ends; of a closure, its own edge. */
  readonly turned: ReadonlySet<string>;
  /** Laid on a line within a piece once what its row names is sewn: before what was sewn on is turned. */
  readonly slit: boolean;
  /** Folded back behind a closure. */
  readonly closure: boolean;
  /** Sewn before it by its row's own word. */
  readonly after: readonly string[];
  /** An edge sewn to itself on the piece's other half. */
  readonly mirrored: boolean;
};

export function sewnOf(seam: Seam, after: readonly string[], drawing: Drawing): Sewn {
  const { join, first, second } = seam;
  const [on] = first;
  const ground = on && drawing.drawn.get(on.piece);
  const [one, two] = [new Set(first.map(keyOf)), new Set(second.map(keyOf))];
  const onLine = join === 'laid' && on !== undefined && !ground?.shape.edges[on.edge];
  const inside = after.length === 0 && (onLine || (join === 'laid' && on !== undefined && isCaught(second, drawing)));
  return {
    seam,
    first: one,
    second: two,
    chains: [chainOf(first, second, drawing), chainOf(second, first, drawing)].flatMap((chain) => chain ?? []),
    pieces: [...new Set([...first, ...second].map((ref) => ref.piece))],
    finishes: join === 'folded' || join === 'laid',
    inside,
    slit: onLine && after.length > 0 && first.every(({ times }) => times === 2),
    dart:
      endsInPoint(seam, drawing) ||
      (inside &&
        on !== undefined &&
        second.every(({ piece, edge }) => piece === on.piece && !ground?.shape.edges[edge])),
    turned: new Set(join === 'folded' ? turnedOf(first, drawing).map(keyOf) : []),
    closure: join === 'folded' && first.some((ref) => roleOf(ref, drawing) === 'closure'),
    after,
    mirrored: first.length === 1 && second.length === 1 && [...one].every((edge) => two.has(edge)),
  };
}

/** One edge of a piece is sewn to the next. */
function endsInPoint({ join, first: [one], second: [two] }: Seam, drawing: Drawing): boolean {
  return (
    join === 'sewn' && one?.piece === two?.piece && one !== undefined && neighbour(one, 'end', drawing) === two?.edge
  );
}

const roleOf = ({ piece, edge }: Ref, { drawn, choices }: Drawing) => drawn.get(piece)?.row.roles(choices)[edge];

/** The raw top of a facing lies along a neckline, and is caught in whatever is sewn there. */
function isCaught(laid: readonly Ref[], drawing: Drawing): boolean {
  return laid.length > 0 && laid.every((ref) => roleOf(ref, drawing) === 'neckline');
}

function turnedOf(first: readonly Ref[], drawing: Drawing): readonly Ref[] {
  const closures = first.filter((ref) => roleOf(ref, drawing) === 'closure');
  return closures.length > 0 ? closures : first;
}

function chainOf(refs: readonly Ref[], others: readonly Ref[], drawing: Drawing): SewnChain | undefined {
  const [head, tail] = [refs[0], refs[refs.length - 1]];
  if (!head || !tail) return undefined;
  const starts = refs.map((ref) => beside(ref, 'start', drawing));
  const stops = refs.map((ref) => beside(ref, 'end', drawing));
  return {
    ends: [starts[0] ?? '', stops[stops.length - 1] ?? ''],
    joints: starts.slice(1).map((start, index) => [stops[index] ?? '', start] as const),
    around: [...refs.map(keyOf), ...starts, ...stops],
    across: others[0]?.piece,
  };
}

const keyOf = ({ piece, edge }: Ref) => `${piece}.${edge}`;

function beside(ref: Ref, side: 'start' | 'end', drawing: Drawing): string {
  return `${ref.piece}.${neighbour(ref, side, drawing)}`;
}
