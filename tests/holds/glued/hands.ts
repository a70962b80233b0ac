import type { Draft, Ref, Seam } from '../../../app/drafting/draft-types';
import { slitsOf } from './halves';

/** Which half of a piece, drawn or mirrored, lies on the wearer's left: 1 the drawn one. */
export type Hands = ReadonlyMap<string, 1 | -1>;

export const way = (ref: Ref): 1 | -1 => (ref.back ? -1 : 1);

/** Sewn to itself: to its own other half, or to a second layer. */
export function isSelf({ first, second }: Seam): boolean {
  return (
    first.length === 1 &&
    second.length === 1 &&
    first[0]?.piece === second[0]?.piece &&
    first[0]?.edge === second[0]?.edge
  );
}

/**
 * Seams that make one surface of their edges. What is laid on a line or turned on itself does not, but for a slit and
 * its facing, which are sewn together down one half and up the other.
 */
export function gluing(draft: Draft): Seam[] {
  return draft.seams.flatMap((seam): Seam[] => {
    if (seam.join !== 'laid' && seam.join !== 'folded') return [seam];
    if (seam.join === 'folded' || ![...seam.first, ...seam.second].every((ref) => isSlit(ref, draft))) return [];
    const once = (refs: readonly Ref[]) => refs.map(({ piece, edge }) => ({ piece, edge }));
    return [{ ...seam, join: 'sewn', sewn: 2, first: once(seam.first), second: once(seam.second) }];
  });
}

function isSlit(ref: Ref, { pieces }: Draft): boolean {
  const piece = pieces.find((each) => each.name === ref.piece);
  return piece !== undefined && slitsOf(piece).some((slit) => slit.name === ref.edge);
}

/**
 * Right sides together: two edges are joined so that one is walked with its piece's outline and the other against it. A
 * seam where that cannot be is twisted, and named.
 */
export function handsOf(seams: readonly Seam[]): { readonly hands: Hands; readonly twisted: readonly string[] } {
  const links = seams.filter((seam) => !isSelf(seam)).flatMap(linksOf);
  const hands = new Map<string, 1 | -1>();
  for (const { one } of links) {
    if (hands.has(one)) continue;
    hands.set(one, 1);
    for (let found = true; found; ) {
      found = false;
      for (const { one: a, other: b, same } of links) {
        const [known, unknown] = hands.has(a) ? [a, b] : [b, a];
        if (!hands.has(known) || hands.has(unknown)) continue;
        hands.set(unknown, ((hands.get(known) ?? 1) * same) as 1 | -1);
        found = true;
      }
    }
  }
  const twisted = links
    .filter(({ one, other, same }) => (hands.get(one) ?? 1) * same !== hands.get(other))
    .map(({ seam }) => seam);
  return { hands, twisted: [...new Set(twisted)] };
}

type Link = { readonly seam: string; readonly one: string; readonly other: string; readonly same: 1 | -1 };

function linksOf({ name, first, second, sewn }: Seam): Link[] {
  const lead = first[0];
  if (!lead || sewn === 1) return [];
  const link = (ref: Ref, turn: 1 | -1): Link => ({
    seam: name,
    one: lead.piece,
    other: ref.piece,
    same: (way(lead) * way(ref) * turn) as 1 | -1,
  });
  return [...first.slice(1).map((ref) => link(ref, 1)), ...second.map((ref) => link(ref, -1))];
}
