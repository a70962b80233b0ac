// When a garment goes round the toy for the first time: then it is tried on, before it is finished.

import type { Ref, Seam } from '../draft-types';
import { after, before, isSewnOn } from './beside';
import { hasTwin, isSelf, kindOf } from './kind';
import type { Known } from './known';
import { closesAtNeck } from './notes';
import { runsOverFold } from './runs';

/**
 * The pass after which the garment goes round the toy: the first that joins what hangs together already, or the longer seam of the
 * same two pieces before it; else the last that joins two pieces left and right, or a piece to itself; −1 where none does, and where
 * it closes at its neck alone. What is then closed to a ring beside it lies flat still.
 */
export function closingOf(passes: readonly (readonly Seam[])[], known: Known): number {
  const groups = new Map<string, string>();
  const closing = passes.findIndex((seams, index) => {
    const closes = closesRound(seams, groups, known) && !ringsBeside(seams, passes.slice(index + 1).flat(), known);
    joinGroups(seams, groups);
    return closes;
  });
  if (closing >= 0) return longestBefore(passes, closing, known);
  if (closesAtNeck(known)) return -1;
  return passes.findLastIndex(
    (seams) => seams.every((seam) => closesSides(seam, known)) || seams.some((seam) => closesItself(seam, known)),
  );
}

const closesSides = (seam: Seam, known: Known): boolean =>
  kindOf(seam, known) === 'join' && seam.sewn === 2 && !runsOverFold(seam, known);

/** The garment's main piece: a leg, left and right, or the halves of a tube. A ring sewn once is an ornament's. */
const closesItself = (seam: Seam, known: Known): boolean => {
  const kind = kindOf(seam, known);
  const goesRound = kind === 'join' || (kind === 'ring' && seam.sewn === 2);
  return goesRound && isSelf(seam) && seam.first[0]?.piece === known.draft.pieces[0]?.name;
};

/** Edges beside these are sewn to each other later. */
const ringsBeside = (seams: readonly Seam[], later: readonly Seam[], known: Known): boolean => {
  const refs = seams.flatMap(({ first, second }) => [...first, ...second]);
  const beside = refs.flatMap((ref) => (known.edge(ref) ? [before(ref, known), after(ref, known)] : []));
  return later.some((seam) => kindOf(seam, known) === 'ring' && beside.some((ref) => isSewnOn(ref, [seam])));
};

/** A lined top is closed at its shoulders, last, and yet it is round the toy that it must fit: at its sides. */
function longestBefore(passes: readonly (readonly Seam[])[], closing: number, known: Known): number {
  const joins = ({ first, second }: Seam) =>
    [...new Set([...first, ...second].map(({ piece }) => piece))].sort().join();
  const isLined = ({ first }: Seam) => first.every(({ piece }) => hasTwin(known.piece(piece), known));
  const pairs = new Set((passes[closing] ?? []).filter(isLined).map(joins));
  const long = (seams: readonly Seam[] = []) =>
    Math.max(
      0,
      ...seams.flatMap((seam) => (pairs.has(joins(seam)) && kindOf(seam, known) === 'join' ? seam.firstLength : [])),
    );
  return passes
    .slice(0, closing)
    .reduce((best, seams, index) => (long(seams) > long(passes[best]) ? index : best), closing);
}

/** Joins pieces that hang together already: what lay flat becomes a round. Two layers of one piece do not. */
function closesRound(seams: readonly Seam[], groups: ReadonlyMap<string, string>, known: Known): boolean {
  return seams.some((seam) => {
    const { join, first, second } = seam;
    if (join === 'folded' || join === 'laid' || kindOf(seam, known) === 'bag') return false;
    const [one, two] = [first, second].map((refs) => new Set(refs.map(({ piece }) => groupOf(piece, groups))));
    const pieces = new Set([...first, ...second].map(({ piece }) => piece));
    if (pieces.size < 2 || [...pieces].some((name) => known.isStrip(name))) return false;
    if ([first[0], second[0]].every((ref) => ref && isBesideSlit(ref, known))) return false;
    return [...(one ?? [])].some((group) => two?.has(group));
  });
}

/** A seam that goes on past a slit closes nothing round: a hood's crown behind its ears. */
const isBesideSlit = (ref: Ref, known: Known): boolean =>
  [before(ref, known), after(ref, known)].some((each) => known.edge(each)?.role === 'opening');

const groupOf = (piece: string, groups: ReadonlyMap<string, string>): string => {
  const to = groups.get(piece);
  return to === undefined ? piece : groupOf(to, groups);
};

function joinGroups(seams: readonly Seam[], groups: Map<string, string>): void {
  for (const { first, second } of seams) {
    const [whole, ...others] = [...new Set([...first, ...second].map(({ piece }) => groupOf(piece, groups)))];
    for (const other of others) if (whole !== undefined) groups.set(other, whole);
  }
}
