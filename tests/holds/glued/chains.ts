import type { Ref, Seam } from '../../../app/drafting/draft-types';
import type { Half } from './halves';
import { type Hands, isSelf, way } from './hands';

/** One side of a half as a seam walks it. */
export type Step = { readonly half: Half; readonly side: string; readonly way: 1 | -1 };
/** Two chains sewn to each other from their starts to their ends. */
export type Joint = { readonly seam: Seam; readonly one: readonly Step[]; readonly two: readonly Step[] };
/** Rings of many pieces, sewn round in one: which of them starts where does not matter. */
export type Ringed = { readonly seam: Seam; readonly one: readonly Step[]; readonly two: readonly Step[] };

export type Chains = {
  readonly joints: readonly Joint[];
  readonly rings: readonly Ringed[];
  readonly missing: readonly string[];
};

/** What each seam joins, left and right; `missing` names the copies that are not there to be sewn. */
export function chainsOf(seams: readonly Seam[], halves: readonly Half[], hands: Hands): Chains {
  const layered = layeredIn(seams, halves);
  const joints: Joint[] = [];
  const rings: Ringed[] = [];
  const missing: string[] = [];
  const found = (steps: readonly (Step | undefined)[], seam: Seam): Step[] => {
    const here = steps.flatMap((step) => step ?? []);
    if (here.length < steps.length) missing.push(`${seam.name}: a copy to sew is missing`);
    return here;
  };
  for (const seam of seams) {
    if (isSelf(seam)) joints.push(...selfJoints(seam, halves, layered));
    else if (seam.sewn === 1)
      rings.push({ seam, one: everyStep(seam.first, halves), two: everyStep(seam.second, halves) });
    else
      for (const side of [1, -1] as const) {
        const [one, two] = [seam.first, seam.second].map((refs) =>
          found(
            refs.flatMap((ref) => steps(ref, side, halves, hands)),
            seam,
          ),
        );
        joints.push({ seam, one: one ?? [], two: two ?? [] });
      }
  }
  return { joints, rings, missing };
}

/** Pieces cut twice and sewn to themselves along more than one edge lie in two layers: a bib, a turned collar. */
export function layeredIn(seams: readonly Seam[], halves: readonly Half[]): ReadonlySet<string> {
  const own = seams.filter(isSelf).map((seam) => seam.first[0]?.piece ?? '');
  const twice = own.filter((piece, at) => own.indexOf(piece) < at);
  return new Set(twice.filter((piece) => halves.some((half) => half.piece.name === piece && half.copy > 0)));
}

function steps(ref: Ref, side: 1 | -1, halves: readonly Half[], hands: Hands): (Step | undefined)[] {
  const hand = ((hands.get(ref.piece) ?? 1) * side) as 1 | -1;
  const round = (ref.times ?? 1) > 1;
  const copy = round && side < 0 ? 1 : 0;
  const at = (wanted: 1 | -1, direction: 1 | -1): Step | undefined => {
    const half = halves.find((each) => each.piece.name === ref.piece && each.copy === copy && each.hand === wanted);
    return half && { half, side: ref.edge, way: direction };
  };
  if (!round) return [at(hand, way(ref))];
  // Round a whole strip: from one of its ends over the fold to the other.
  const first = at((-hand * way(ref)) as 1 | -1, -1);
  const then = at((hand * way(ref)) as 1 | -1, 1);
  return ref.back ? [at(hand, -1), at(-hand as 1 | -1, 1)] : [first, then];
}

function everyStep(refs: readonly Ref[], halves: readonly Half[]): Step[] {
  return refs.flatMap((ref) =>
    halves.filter((half) => half.piece.name === ref.piece).map((half) => ({ half, side: ref.edge, way: way(ref) })),
  );
}

/** An edge to itself: a half to the other, a layer to the next, a panel to the next round a ring. */
function selfJoints(seam: Seam, halves: readonly Half[], layered: ReadonlySet<string>): Joint[] {
  const ref = seam.first[0];
  if (!ref) return [];
  const own = halves.filter((half) => half.piece.name === ref.piece);
  const copies = 1 + Math.max(...own.map((half) => half.copy));
  const next = (copy: number) => {
    if (layered.has(ref.piece)) return own[0]?.piece.onFold ? (copy % 2 === 0 ? copy + 1 : copy - 1) : copy;
    return (ref.times ?? 1) > 1 ? (copy + 1) % copies : copy;
  };
  return own
    .filter((half) => half.hand === 1)
    .flatMap((half) => {
      const other = own.find((each) => each.hand === -1 && each.copy === next(half.copy));
      const step = (which: Half): Step => ({ half: which, side: ref.edge, way: 1 });
      return other ? [{ seam, one: [step(half)], two: [step(other)] }] : [];
    });
}
