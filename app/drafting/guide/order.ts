import type { Ref, Seam, SewingStep } from '../draft-types';
import { isSelf, kindOf } from './kind';
import { type Known, piecesOf } from './known';

/**
 * The draft's order of sewing, gone through as a maker would: where a side and the seam of what is set in at its end are sewn
 * one after the other, they are one line of stitches, and what lies only on the second of them is done before both.
 */
export function passesOf(known: Known): readonly (readonly Seam[])[] {
  return together(inPasses(known), known);
}

/** The edges of two layers of one piece are sewn all round in one go, but for the gap. */
function together(passes: readonly (readonly Seam[])[], known: Known): readonly (readonly Seam[])[] {
  const bagged = (seams: readonly Seam[]) => seams.every((seam) => isSelf(seam) && kindOf(seam, known) === 'bag');
  const joined: (readonly Seam[])[] = [];
  for (const pass of passes) {
    const last = joined.at(-1);
    const alike = last && bagged(last) && bagged(pass) && last[0]?.first[0]?.piece === pass[0]?.first[0]?.piece;
    if (last && alike) joined.splice(-1, 1, [...last, ...pass]);
    else joined.push(pass);
  }
  return joined;
}

function inPasses(known: Known): readonly (readonly Seam[])[] {
  const steps = known.draft.sewing.map(({ seams }: SewingStep) => seams.map((name) => known.seam(name)));
  const passes: (readonly Seam[])[] = [];
  const left = [...steps];
  while (left.length > 0) {
    const [step, ...others] = left;
    if (!step) break;
    left.splice(0, left.length, ...others);
    const on = left.findIndex((other) => runsOn(step, other, passes, known));
    if (on < 0) {
      passes.push(step);
      continue;
    }
    const next = left[on] ?? [];
    const between = left.slice(0, on);
    const sooner = between.filter((other) => isOfOnly(other, next, step));
    const later = between.filter((other) => !sooner.includes(other));
    // What lies between and must come first keeps the two apart.
    if (later.some((other) => meets(other, sooner.flat(), known))) {
      passes.push(step);
      continue;
    }
    passes.push(...sooner, [...step, ...next]);
    left.splice(0, left.length, ...later, ...left.slice(on + 1));
  }
  return passes;
}

const refsOf = (seams: readonly Seam[]): readonly Ref[] => seams.flatMap(({ first, second }) => [...first, ...second]);

/** Both plain seams, and ending where they meet at one seam that is sewn already: a side and the underarm of its sleeve. */
function runsOn(
  step: readonly Seam[],
  other: readonly Seam[],
  done: readonly (readonly Seam[])[],
  known: Known,
): boolean {
  const plain = [...step, ...other].every(({ join, sewn }) => join === 'sewn' && sewn === 2);
  if (!plain || step.length !== 1 || !other.every(isSelf)) return false;
  const across = done.flat().filter(({ join }) => join !== 'folded' && join !== 'laid');
  return refsOf(step).every((ref) => across.some((seam) => joinsBeside(seam, ref, refsOf(other), known)));
}

/** Joins an edge beside this one to an edge beside one of those. */
function joinsBeside({ first, second }: Seam, ref: Ref, others: readonly Ref[], known: Known): boolean {
  const touches = (refs: readonly Ref[], of: Ref) =>
    refs.some(({ piece, edge }) => piece === of.piece && neighbours(of, known).includes(edge));
  return [
    [first, second],
    [second, first],
  ].some(([one = [], two = []]) => touches(one, ref) && others.some((other) => touches(two, other)));
}

function neighbours({ piece, edge }: Ref, known: Known): readonly string[] {
  const { edges } = known.piece(piece);
  const at = edges.findIndex(({ name }) => name === edge);
  // Lines inside a piece have no neighbours.
  return at < 0 ? [] : [edges.at(at - 1)?.name ?? '', edges[(at + 1) % edges.length]?.name ?? ''];
}

/** Lies on pieces of the second step alone. */
function isOfOnly(step: readonly Seam[], next: readonly Seam[], not: readonly Seam[]): boolean {
  const [own, of, other] = [step, next, not].map((each) => piecesOf(refsOf(each)));
  return (own ?? []).every((name) => (of ?? []).includes(name) && !(other ?? []).includes(name));
}

/** Sewn along an edge of those, or along one beside it: a collar at a sleeve's upper end is far from its cuff. */
function meets(step: readonly Seam[], others: readonly Seam[], known: Known): boolean {
  const near = refsOf(step).flatMap((ref) =>
    [ref.edge, ...neighbours(ref, known)].map((edge) => `${ref.piece}.${edge}`),
  );
  return refsOf(others).some(({ piece, edge }) => near.includes(`${piece}.${edge}`));
}
