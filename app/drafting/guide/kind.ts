import type { Edge, Piece, Ref, Role, Seam } from '../draft-types';
import { angleBetween, endTangent, startTangent } from '../geometry';
import type { Kind } from './guide-types';
import { type Known, piecesOf } from './known';

const SAME_LENGTH_MM = 0.5;

/** What is done at a seam, from its join, the roles of its edges and what kind of pieces meet. */
export function kindOf(seam: Seam, known: Known): Kind {
  if (seam.join === 'folded') return turned(seam, known);
  if (seam.join === 'laid') return laid(seam, known);
  if (seam.join !== 'gathered' && isBinding(seam, known)) return 'bind';
  if (isOpenDart(seam, known)) return 'dart-open';
  if (isRing(seam, known)) return 'ring';
  if (isBagged(seam, known)) return 'bag';
  return seam.join === 'sewn'
    ? 'join'
    : ({ eased: 'ease', gathered: 'gather', pleated: 'pleat', stretched: 'stretch' } as const)[seam.join];
}

function turned({ first }: Seam, { edge, isStrip }: Known): Kind {
  const roles = first.map((ref) => edge(ref)?.role);
  if (roles.includes('closure')) return 'closure';
  if (roles.includes('casing')) return 'casing';
  if (first.every(({ piece }) => isStrip(piece))) return 'bind-end';
  if (first.every((ref) => edge(ref)?.allowance === 0)) return 'raw-hem';
  return roles.includes('hem') ? 'hem' : 'turn';
}

function laid({ first, second }: Seam, known: Known): Kind {
  const { edge, isStrip, draft } = known;
  const [on, over] = [first[0], second[0]];
  if (!on || !over) return 'place';
  if (on.piece === over.piece && holdsElastic(over.piece, known)) return 'turn-in';
  if (isStrip(over.piece) && on.piece === over.piece) return 'bind-over';
  if (!edge(on)) return edge(over) ? 'place' : on.piece === over.piece ? 'dart' : 'slit';
  if (edge(over)?.role === 'neckline') return 'baste';
  const areCut = edge(on)?.role === 'edge' && edge(over)?.role === 'edge';
  // A facing along an edge that is bound is caught under the strip.
  if (areCut) return on.piece === over.piece ? 'lap' : 'baste';
  // An edge that is sewn elsewhere is stitched over, not closed.
  const elsewhere = draft.seams.some((each) => each.join !== 'laid' && isOn(each, on));
  if (on.edge !== over.edge || elsewhere) return 'inside';
  const layers = on.piece === over.piece || isLayered(known.piece(on.piece), known.piece(over.piece), known);
  return hasRawEdge(known.piece(over.piece), known) || !layers ? 'by-hand' : 'gap';
}

/** A strip turned inside as a whole, just deep enough for an elastic to lie under it: folded lengthwise it would be twice as deep. */
function holdsElastic(name: string, { draft, piece }: Known): boolean {
  const elastic = draft.notions.find(({ kind, place }) => kind === 'elastic' && name.startsWith(place));
  const deep = piece(name).edges.find((edge) => edge.name === 'side')?.length ?? 0;
  return elastic !== undefined && deep > 0 && deep < 2 * (elastic.width ?? 0) + TURNED_MM;
}

/** An elastic's strip is turned under and stitched within so much of it, mm. */
const TURNED_MM = 8;

const isSame = (a: Ref, b: Ref) => a.piece === b.piece && a.edge === b.edge;

function isBinding({ first, second }: Seam, { isStrip }: Known): boolean {
  const [one, two] = [first, second].map((refs) => refs.every(({ piece }) => isStrip(piece)));
  return one !== two;
}

/** Sewn to itself, or to another of its kind. */
export const isSelf = ({ first, second }: Seam): boolean =>
  first.length === 1 && second.length === 1 && first[0]?.piece === second[0]?.piece;

/** Two edges of one piece that follow each other round it, sewn from its edge to the point between them. */
function isOpenDart(seam: Seam, known: Known): boolean {
  const [one, two] = [seam.first[0], seam.second[0]];
  if (!one || !two || !isSelf(seam) || one.edge === two.edge) return false;
  const { edges } = known.piece(one.piece);
  const at = edges.findIndex(({ name }) => name === one.edge);
  return edges[(at + 1) % edges.length]?.name === two.edge;
}

/** A piece closed round on itself: one of its edges sewn to another, or to the same on its other half. */
function isRing(seam: Seam, known: Known): boolean {
  const [one, two] = [seam.first[0], seam.second[0]];
  if (!one || !two || !isSelf(seam) || isPanel(one)) return false;
  const own = known.piece(one.piece);
  if (one.edge !== two.edge) return !own.onFold;
  return own.onFold && selfSeams(one.piece, known) === 1;
}

/** Of several alike that go round: gores, the panels of a tier. */
const isPanel = ({ times }: Ref) => (times ?? 1) > 1;

/** Two layers of one outline, sewn edge to edge to be turned out: a bib, a lining, a facing with its free edge left as cut. */
function isBagged(seam: Seam, known: Known): boolean {
  return seam.first.every((one, index) => {
    const two = seam.second[index];
    if (!two || isPanel(one)) return false;
    const [a, b] = [known.piece(one.piece), known.piece(two.piece)];
    const pair = a.mirrored && (a.copies === 2 || isHemmed(a, known));
    if (a === b) return one.edge === two.edge && !pair && selfSeams(a.name, known) > 1;
    const layers = isTwin(a, b) ? isLayered(a, b, known) : hasRawEdge(a, known) !== hasRawEdge(b, known);
    return layers && liesOn(edgeOf(a, one), edgeOf(b, two));
  });
}

/** Its own edges are turned, so that it is worn, not turned out: the halves of a pair of socks. */
const isHemmed = ({ name }: Piece, { draft }: Known): boolean =>
  draft.seams.some(({ join, first }) => join === 'folded' && first.some(({ piece }) => piece === name));

const selfSeams = (piece: string, { draft }: Known): number =>
  draft.seams.filter((each) => isSelf(each) && each.join !== 'laid' && each.first[0]?.piece === piece).length;

/** One lies on the other rather than beside it: they are joined round a corner, or at an edge that ends at a corner at the middle of both. */
function isLayered(a: Piece, b: Piece, { draft }: Known): boolean {
  const shared = draft.seams.flatMap(({ first, second }) =>
    first.flatMap((one, index) => {
      const two = second[index];
      const [from, to] = [one.piece, two?.piece];
      const pair = (from === a.name && to === b.name) || (from === b.name && to === a.name);
      return pair && one.edge === two?.edge ? [one.edge] : [];
    }),
  );
  const middle = (piece: Piece, edge: string) => corners(piece, edge).some((each) => each.some(isMiddle));
  const round = (edge: string) => corners(a, edge).some((each) => each.every(({ name }) => shared.includes(name)));
  return shared.some((edge) => (middle(a, edge) && middle(b, edge)) || round(edge));
}

/** The two edges at each of an edge's ends that is a corner: a slit that is left in a seam runs straight on from it. */
function corners({ edges }: Piece, edge: string): readonly (readonly [Edge, Edge])[] {
  const at = edges.findIndex(({ name }) => name === edge);
  const [before, on, after] = [edges.at(at - 1), edges[at], edges[(at + 1) % edges.length]];
  return [[before, on] as const, [on, after] as const].flatMap(([one, next]) =>
    one && next && angleBetween(endTangent(one.path), startTangent(next.path)) > STRAIGHT_ON
      ? [[one, next] as const]
      : [],
  );
}

/** Radians; corners at a middle are about square. */
const STRAIGHT_ON = 0.3;

const atMiddle: ReadonlySet<Role> = new Set(['fold', 'closure', 'opening']);
const isMiddle = ({ role }: Edge): boolean => atMiddle.has(role);

const edgeOf = ({ edges }: Piece, { edge }: Ref) => edges.find(({ name }) => name === edge);
/** Left as it is cut: a bound edge is sewn to its strip. */
export const hasRawEdge = ({ name, edges }: Piece, { draft }: Known) =>
  edges.some(
    ({ role, name: edge }) => role === 'edge' && !draft.seams.some((seam) => isOn(seam, { piece: name, edge })),
  );
const isOn = ({ first, second }: Seam, ref: Ref) => [...first, ...second].some((each) => isSame(each, ref));

/** Drawn at one place, so that one piece lies exactly on the other. */
function liesOn(a: Edge | undefined, b: Edge | undefined): boolean {
  if (!a || !b || Math.abs(a.length - b.length) > SAME_LENGTH_MM) return false;
  const [from, to] = [a.path[0]?.from, b.path[0]?.from];
  return from !== undefined && to !== undefined && Math.hypot(from.x - to.x, from.y - to.y) < SAME_LENGTH_MM;
}

const isTwin = (a: Piece, b: Piece) =>
  a.edges.length === b.edges.length && a.edges.every((edge, index) => liesOn(edge, b.edges[index]));

/** Another piece of the same outline lies on it and leaves no edge as it is cut: its lining, or what it lines. */
export function hasTwin(piece: Piece, known: Known): boolean {
  return known.draft.pieces.some(
    (other) => other !== piece && isTwin(piece, other) && isLayered(piece, other, known) && !hasRawEdge(other, known),
  );
}

/** The pieces of a seam's two sides; what both hold is named once. */
export function sidesOf(seams: readonly Seam[]): {
  readonly first: readonly string[];
  readonly second: readonly string[];
} {
  const refs = (side: 'first' | 'second'): readonly Ref[] => seams.flatMap((seam) => seam[side]);
  const first = piecesOf(refs('first'));
  return { first, second: piecesOf(refs('second')).filter((name) => !first.includes(name)) };
}
