// Several garments of one toy as one draft, so that all their pieces are laid on the same sheets.

import type { Draft } from './draft-types';

/** The drafts together, the first's order and date standing for all. One alone stays as it is; none throws a RangeError. */
export function together(drafts: readonly Draft[]): Draft {
  const [first, ...others] = drafts;
  if (!first) throw new RangeError('no drafts');
  if (others.length === 0) return first;
  return {
    ...first,
    pieces: drafts.flatMap(({ pieces }) => pieces),
    notions: drafts.flatMap(({ notions }) => notions),
    adjustments: drafts.flatMap(({ adjustments }) => adjustments),
    flags: drafts.flatMap(({ flags }) => flags),
    outfit: drafts,
  };
}

/** The drafts that one is made of: itself, or the garments of an outfit in the order of their pieces. */
export const garmentsIn = (draft: Draft): readonly Draft[] => draft.outfit ?? [draft];

/** The draft that a piece, by its place among all, belongs to. */
export function ownerOf(draft: Draft, piece: number): Draft {
  let before = 0;
  for (const each of garmentsIn(draft)) {
    before += each.pieces.length;
    if (piece < before) return each;
  }
  return draft;
}
