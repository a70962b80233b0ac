import { neighbour } from './chain';
import type { Ref, Seam, SewingStep } from './draft-types';
import type { Drawing } from './drawing';

const verbs: Readonly<Record<Seam['join'], string>> = {
  sewn: 'sew',
  eased: 'ease',
  gathered: 'gather',
  pleated: 'pleat',
  laid: 'lay',
  folded: 'turn',
};

/**
 * The order of sewing, worked out from the seams alone. A seam that crosses another comes first; a seam that closes a
 * piece into a tube comes after what is sewn along the tube's end while it still lies flat; what is turned back, or
 * stitched down over a seam, comes after the seams that end there; but a closure is folded back before what is sewn over its
 * end. A piece sewn to its own other
 * half is made up before it is joined to others, unless it lies along an end that is still flat. Of several that may come
 * next, one that joins pieces not yet joined is sewn before one that closes a ring; other ties keep the order of the rows.
 */
export function sewingOrder(seams: readonly Seam[], drawing: Drawing): SewingStep[] {
  const left = [...seams];
  const done: Seam[] = [];
  const joined = new Map<string, string>();
  while (left.length > 0) {
    const ready = left.filter(
      (seam) => !left.some((other) => other !== seam && comesBefore(other, seam, seams, drawing)),
    );
    const next =
      ready.find((seam) => joins(seam, joined)) ?? ready.find((seam) => !finishes(seam)) ?? ready[0] ?? left[0];
    if (!next) break;
    left.splice(left.indexOf(next), 1);
    done.push(next);
    join(next, joined);
  }
  return done.map((seam) => ({ step: verbs[seam.join], seams: [seam.name] }));
}

function piecesOf(seam: Seam): string[] {
  return [...new Set([...seam.first, ...seam.second].map((ref) => ref.piece))];
}

/** The piece that stands for everything a piece is joined to so far. */
function groupOf(piece: string, joined: ReadonlyMap<string, string>): string {
  const to = joined.get(piece);
  return to === undefined ? piece : groupOf(to, joined);
}

function joins(seam: Seam, joined: ReadonlyMap<string, string>): boolean {
  return new Set(piecesOf(seam).map((piece) => groupOf(piece, joined))).size > 1;
}

function join(seam: Seam, joined: Map<string, string>): void {
  const groups = new Set(piecesOf(seam).map((piece) => groupOf(piece, joined)));
  const [whole, ...others] = [...groups];
  for (const other of others) if (whole !== undefined) joined.set(other, whole);
}

function comesBefore(early: Seam, late: Seam, all: readonly Seam[], drawing: Drawing): boolean {
  if (liesInside(early, drawing)) return !liesInside(late, drawing) && !hemsOf(late, early) && touches(early, late);
  if (liesInside(late, drawing)) return hemsOf(early, late);
  if (closure(late, drawing) && endsAt(early, late, drawing)) return false;
  if (finishes(late)) return !finishes(early) && sides(late).some((side) => endsOn(early, side, drawing));
  if (finishes(early)) return closure(early, drawing) && endsAt(late, early, drawing);
  if (mirrors(early) !== mirrors(late) && piecesOf(late).some((piece) => piecesOf(early).includes(piece))) {
    const [own, other] = mirrors(early) ? [early, late] : [late, early];
    const flat = all.some((seam) => seam !== own && closes(seam, other, drawing));
    return flat !== mirrors(early);
  }
  return (
    sides(late).some((side) => crosses(early, side, drawing)) ||
    closes(late, early, drawing) ||
    all.some((other) => closesRound(late, early, other, drawing))
  );
}

/**
 * Sewn first, the seam would close two pieces into a ring round a third that either is sewn to along its end: a side under
 * a raglan sleeve.
 */
function closesRound(seam: Seam, one: Seam, other: Seam, drawing: Drawing): boolean {
  if (one === other || seam === other || finishes(other)) return false;
  const [first, second] = [keys(seam.first), keys(seam.second)];
  const ends = (of: Seam, at: ReadonlySet<string>) =>
    sides(of).findIndex((side) => endsOf(side, drawing).some((end) => at.has(end)));
  const across = (of: Seam, at: ReadonlySet<string>) => {
    const side = ends(of, at);
    return side < 0 ? undefined : sides(of)[1 - side]?.[0]?.piece;
  };
  const round = (a: ReadonlySet<string>, b: ReadonlySet<string>) => {
    const third = across(one, a);
    return third !== undefined && third === across(other, b) && !piecesOf(seam).includes(third);
  };
  return round(first, second) || round(second, first);
}

/** Stitched on a line inside a piece, as a pocket is. */
function liesInside(seam: Seam, drawing: Drawing): boolean {
  const [on] = seam.first;
  return seam.join === 'laid' && on !== undefined && !drawing.drawn.get(on.piece)?.shape.edges[on.edge];
}

/** Folded back behind a closure. */
function closure(seam: Seam, drawing: Drawing): boolean {
  const [on] = seam.first;
  const row = on && drawing.drawn.get(on.piece)?.row;
  return seam.join === 'folded' && on !== undefined && row?.roles(drawing.choices)[on.edge] === 'closure';
}

/** A seam ends where another's edge begins: a neckline bound to the very edge of an opening is bound over its fold. */
function endsAt(seam: Seam, other: Seam, drawing: Drawing): boolean {
  const at = keys(other.first);
  return sides(seam).some((side) => endsOf(side, drawing).some((end) => at.has(end)));
}

/** Turned back, or stitched down over a seam that is there already. */
function finishes(seam: Seam): boolean {
  return seam.join === 'folded' || seam.join === 'laid';
}

/** Turns back an edge of what is to be laid on another piece. */
function hemsOf(seam: Seam, laid: Seam): boolean {
  const pieces = new Set(laid.second.map((ref) => ref.piece));
  return seam.join === 'folded' && seam.first.every((ref) => pieces.has(ref.piece));
}

/** A laid piece is stitched while its ground still lies flat. */
function touches(early: Seam, late: Seam): boolean {
  const pieces = new Set(early.first.map((ref) => ref.piece));
  return [...late.first, ...late.second].some((ref) => pieces.has(ref.piece));
}

const sides = (seam: Seam) => [seam.first, seam.second].filter((side) => side.length > 0);
const key = (piece: string, edge: string | undefined) => `${piece}.${edge}`;
const keys = (refs: readonly Ref[]) => new Set(refs.map((ref) => key(ref.piece, ref.edge)));

/** The seam joins the two edges that meet where the chain passes from one piece to the next, or to its own mirror. */
function crosses(seam: Seam, chain: readonly Ref[], drawing: Drawing): boolean {
  const [first, second] = [keys(seam.first), keys(seam.second)];
  const joins = (a: string, b: string) => (first.has(a) && second.has(b)) || (first.has(b) && second.has(a));
  const within = chain.some((ref, index) => {
    const next = chain[index + 1];
    return next && joins(beside(ref, 'end', drawing), beside(next, 'start', drawing));
  });
  const end = endsOf(chain, drawing)[1];
  return within || (end !== undefined && mirrors(seam) && joins(end, end));
}

/** An edge sewn to itself on the mirrored piece. */
function mirrors(seam: Seam): boolean {
  return (
    seam.first.length === 1 &&
    seam.second.length === 1 &&
    seam.first[0]?.piece === seam.second[0]?.piece &&
    seam.first[0]?.edge === seam.second[0]?.edge
  );
}

/** The edges beside a chain's two ends. */
function endsOf(chain: readonly Ref[], drawing: Drawing): string[] {
  const [head, tail] = [chain[0], chain[chain.length - 1]];
  return head && tail ? [beside(head, 'start', drawing), beside(tail, 'end', drawing)] : [];
}

/** The seam joins the far ends of one chain of the other: sewn first, it would close that chain into a ring. */
function closes(seam: Seam, other: Seam, drawing: Drawing): boolean {
  const [first, second] = [keys(seam.first), keys(seam.second)];
  return sides(other).some((chain) => {
    const [a = '', b = ''] = endsOf(chain, drawing);
    return (first.has(a) && second.has(b)) || (first.has(b) && second.has(a));
  });
}

/** The seam holds an edge of the chain, or ends at one. */
function endsOn(seam: Seam, chain: readonly Ref[], drawing: Drawing): boolean {
  const all = keys([...seam.first, ...seam.second]);
  return chain.some((ref) =>
    [key(ref.piece, ref.edge), beside(ref, 'start', drawing), beside(ref, 'end', drawing)].some((each) =>
      all.has(each),
    ),
  );
}

function beside(ref: Ref, side: 'start' | 'end', drawing: Drawing): string {
  return key(ref.piece, neighbour(ref, side, drawing));
}
