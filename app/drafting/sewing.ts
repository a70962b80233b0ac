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
 * piece into a tube comes after what is sewn along the tube's end while it still lies flat; what is turned back comes
 * after the seams that end on it. Ties keep the order of the rows.
 */
export function sewingOrder(seams: readonly Seam[], drawing: Drawing): SewingStep[] {
  const left = [...seams];
  const done: Seam[] = [];
  while (left.length > 0) {
    const ready = left.findIndex((seam) => !left.some((other) => other !== seam && comesBefore(other, seam, drawing)));
    done.push(...left.splice(Math.max(ready, 0), 1));
  }
  return done.map((seam) => ({ step: verbs[seam.join], seams: [seam.name] }));
}

function comesBefore(early: Seam, late: Seam, drawing: Drawing): boolean {
  if (early.join === 'laid') return late.join !== 'laid' && touches(early, late);
  if (late.join === 'laid') return false;
  if (late.join === 'folded')
    return early.join !== 'folded' && sides(late).some((side) => endsOn(early, side, drawing));
  if (early.join === 'folded') return false;
  return sides(late).some((side) => crosses(early, side, drawing)) || closes(late, early, drawing);
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
  const tail = chain[chain.length - 1];
  return (
    within || (tail !== undefined && mirrors(seam) && joins(beside(tail, 'end', drawing), beside(tail, 'end', drawing)))
  );
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

/** The seam joins the far ends of one chain of the other: sewn first, it would close that chain into a ring. */
function closes(seam: Seam, other: Seam, drawing: Drawing): boolean {
  const [first, second] = [keys(seam.first), keys(seam.second)];
  return sides(other).some((chain) => {
    const [head, tail] = [chain[0], chain[chain.length - 1]];
    if (!head || !tail) return false;
    const [a, b] = [beside(head, 'start', drawing), beside(tail, 'end', drawing)];
    return (first.has(a) && second.has(b)) || (first.has(b) && second.has(a));
  });
}

function endsOn(seam: Seam, chain: readonly Ref[], drawing: Drawing): boolean {
  const all = keys([...seam.first, ...seam.second]);
  return chain.some((ref) => all.has(beside(ref, 'start', drawing)) || all.has(beside(ref, 'end', drawing)));
}

function beside(ref: Ref, side: 'start' | 'end', drawing: Drawing): string {
  return key(ref.piece, neighbour(ref, side, drawing));
}
