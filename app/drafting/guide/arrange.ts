import type { Mm } from '../../body';
import type { Piece, Ref, Seam } from '../draft-types';
import { pathBounds } from '../geometry';
import { isSelf, sidesOf } from './kind';
import type { Known } from './known';
import { heightOf, isStripLike, type LaidPart, laidPart, movedTo, pathOf, widthOf } from './laid-part';

/** Between pieces, as a share of the longest side of any of them. */
const GAP_SHARE = 0.16;

/** Pieces laid out, and on which of its halves each unfolded piece is sewn. */
export type Arranged = {
  readonly parts: readonly LaidPart[];
  /** Names of parts that are joined on their other half: they lie to the right of what they meet. */
  readonly onOther: ReadonlySet<string>;
  readonly width: Mm;
  readonly height: Mm;
};

/**
 * Lays the pieces of a step as they lie on the table: upright, what is joined side by side, or one above the other where an
 * upper edge meets a lower one. A piece set in between two others lies between them.
 */
export function arrange(seams: readonly Seam[], known: Known): Arranged {
  const { first, second } = sidesOf(seams);
  const edgesOf = (piece: string) =>
    seams
      .flatMap((seam): readonly Ref[] => [...seam.first, ...seam.second])
      .filter((ref) => ref.piece === piece)
      .map(({ edge }) => edge);
  const pieces = (names: readonly string[]) => names.map((name) => known.piece(name));
  const twin = second.length === 0 ? twinOf(seams, known) : null;
  const [ground, over] = [pieces(first), pieces(second)];
  if (twin) {
    // Turned so that the edges that meet lie beside each other.
    const right = leaning(twin, edgesOf(twin.name), 'x') > 0;
    const sides = [laidPart(twin, !right), laidPart(twin, right)];
    // What is sewn on to them already, and closed with them.
    const above = ground.filter((piece) => piece !== twin).map((piece) => laidPart(piece, false));
    return above.length > 0 ? stackOf(above, sides, new Set()) : row(sides, new Set());
  }
  if (over.length === 0) return rows(ground);
  // What is closed with a side lies above it, whatever its shape.
  const closed = seams.some(isSelf) && !seams.every(isSelf);
  const strips = closed ? undefined : [ground, over].find((each) => each.some(isSlender));
  if (strips) return stack(strips, strips === ground ? over : ground, new Set());
  if (!closed && isEndToEnd(ground, over, edgesOf))
    return isLow(ground, edgesOf) ? stack(ground, over, new Set()) : stack(over, ground, new Set());
  if (!closed && ground.length > 1 && over.length > 1) return stack(over, ground, new Set());
  const [pair, between] = threeOf(seams[0], ground, over);
  const inRow = pair.map((piece, index) => laidPart(piece, facesAway(piece, edgesOf(piece.name), index, pair.length)));
  const onOther = new Set(pair.slice(1).flatMap(({ name, onFold }) => (onFold ? [name] : [])));
  if (between.length === 0) return row(inRow, onOther);
  return stackOf(
    between.map((piece) => laidPart(piece, false)),
    inRow,
    onOther,
  );
}

/** Side by side, in two rows where they are many. */
function rows(pieces: readonly Piece[]): Arranged {
  const half = pieces.length > MOST_IN_ROW ? Math.ceil(pieces.length / 2) : 0;
  const parts = pieces.map((piece) => laidPart(piece, false));
  return half > 0 ? stackOf(parts.slice(0, half), parts.slice(half), new Set()) : row(parts, new Set());
}

/** More pieces than this in one row are too small to be told apart on a phone. */
const MOST_IN_ROW = 2;

/** Two pieces side by side; what is set in between them, or comes after, lies above. */
function threeOf(
  head: Seam | undefined,
  ground: readonly Piece[],
  over: readonly Piece[],
): readonly [readonly Piece[], readonly Piece[]] {
  if (ground.length + over.length < 3) return [[...ground, ...over], []];
  if (ground.length > 1 && over.length === 1 && head && head.first.length > 1) return [ground, over];
  const named = new Set([...(head?.first ?? []), ...(head?.second ?? [])].map(({ piece }) => piece));
  const all = [...ground, ...over];
  return [all.filter(({ name }) => named.has(name)), all.filter(({ name }) => !named.has(name))];
}

/** A pair whose two pieces are joined to each other. */
function twinOf(seams: readonly Seam[], { piece }: Known): Piece | null {
  const [seam] = seams;
  const [one, two] = [seam?.first[0], seam?.second[0]];
  if (!one || !two || one.piece !== two.piece || one.edge !== two.edge) return null;
  const found = piece(one.piece);
  return found.mirrored ? found : null;
}

type EdgesOf = (piece: string) => readonly string[];

/** How far the edges lie from the piece's middle: −1 at its left or top, 1 at its right or foot. */
function leaning(piece: Piece, edges: readonly string[], axis: 'x' | 'y'): number {
  const whole = pathBounds(piece.seamLine);
  const [from, to] = axis === 'x' ? [whole.left, whole.right] : [whole.top, whole.bottom];
  const boxes = edges.map((edge) => pathBounds(pathOf(piece, edge)));
  const middles = boxes.map((box) => (axis === 'x' ? box.left + box.right : box.top + box.bottom) / 2);
  const mean = middles.reduce((sum, each) => sum + each, 0) / Math.max(1, middles.length);
  return to > from ? ((mean - from) / (to - from)) * 2 - 1 : 0;
}

const leansOf = (pieces: readonly Piece[], edgesOf: EdgesOf): number =>
  pieces.reduce((sum, piece) => sum + leaning(piece, edgesOf(piece.name), 'y'), 0) / pieces.length;

const isLow = (pieces: readonly Piece[], edgesOf: EdgesOf) => leansOf(pieces, edgesOf) > 0;

/** The upper edge of the one meets the lower edge of the other. */
function isEndToEnd(ground: readonly Piece[], over: readonly Piece[], edgesOf: EdgesOf): boolean {
  const [one, two] = [leansOf(ground, edgesOf), leansOf(over, edgesOf)];
  return one * two < 0 && Math.min(Math.abs(one), Math.abs(two)) > FAR_SHARE;
}

/** Edges at least this far from the middle are an upper or a lower end. */
const FAR_SHARE = 0.45;

const isSlender = (piece: Piece) => isStripLike(laidPart(piece, false));

/** A piece that is no whole one is turned over where its edge would lie away from its neighbour. */
function facesAway(piece: Piece, edges: readonly string[], index: number, count: number): boolean {
  if (piece.onFold || (index > 0 && index < count - 1)) return false;
  const leans = leaning(piece, edges, 'x');
  return index === 0 ? leans < 0 : leans > 0;
}

const gapOf = (parts: readonly LaidPart[]): Mm =>
  GAP_SHARE * Math.max(...parts.flatMap((part) => [widthOf(part), heightOf(part)]));

function row(parts: readonly LaidPart[], onOther: ReadonlySet<string>): Arranged {
  const gap = gapOf(parts);
  const height = Math.max(...parts.map(heightOf));
  const { laid, width } = inLine(parts, gap, (part) => (height - heightOf(part)) / 2);
  return { parts: laid, onOther, width, height };
}

function stack(upper: readonly Piece[], lower: readonly Piece[], onOther: ReadonlySet<string>): Arranged {
  const [top, foot] = [upper, lower].map((pieces) => pieces.map((piece) => laidPart(piece, false)));
  return stackOf(top ?? [], foot ?? [], onOther);
}

function stackOf(top: readonly LaidPart[], foot: readonly LaidPart[], onOther: ReadonlySet<string>): Arranged {
  const gap = gapOf([...top, ...foot]);
  const high = Math.max(...top.map(heightOf));
  const one = inLine(top, gap, (part) => high - heightOf(part));
  const two = inLine(foot, gap, () => high + gap);
  const width = Math.max(one.width, two.width);
  const centred = ({ laid, width: own }: typeof one) =>
    laid.map((part) => ({ ...part, move: { ...part.move, x: part.move.x + (width - own) / 2 } }));
  return {
    parts: [...centred(one), ...centred(two)],
    onOther,
    width,
    height: high + gap + Math.max(...foot.map(heightOf)),
  };
}

function inLine(parts: readonly LaidPart[], gap: Mm, top: (part: LaidPart) => Mm) {
  let reached = 0;
  const laid = parts.map((part) => {
    const at = reached;
    reached += widthOf(part) + gap;
    return movedTo(part, at, top(part));
  });
  return { laid, width: reached - gap };
}
