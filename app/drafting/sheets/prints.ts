import type { Mm } from '../../body';

/** How large words and lines are: as usual, or for eyes that need them large. */
export const prints = ['usual', 'large'] as const;
export type Print = (typeof prints)[number];

type Size = { readonly width: Mm; readonly height: Mm };

/**
 * What each takes, mm: the fold mark, which has words in it; words along a line; and a label, of which one shape must be
 * free. Large print needs room for a piece's number alone: what finds no room is told on the pages of words.
 */
export const printRooms: Readonly<
  Record<Print, { readonly foldMark: Mm; readonly along: Mm; readonly labels: readonly [Size, ...Size[]] }>
> = {
  usual: {
    foldMark: 5,
    along: 3.6,
    // A few short lines, two longer ones, or one long one under its title.
    labels: [
      { width: 48, height: 20 },
      { width: 76, height: 12 },
      { width: 140, height: 9 },
    ],
  },
  large: { foldMark: 9, along: 8.4, labels: [{ width: 13, height: 11 }] },
};
