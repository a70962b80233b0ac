// The pages of words beside a pattern: a list for each toy, what they take together, and a label for each one's bag.

import type { Mm } from '../../body';
import type { Draft } from '../draft-types';
import { BAG_LABEL, bagLabelInk } from './bag-label';
import type { Paragraph } from './flow';
import { type Ink, smallestOf } from './ink';
import type { Lettering } from './lettering';
import { listWords, togetherWords } from './list-words';
import { magnified } from './magnified';
import { roomIn, wordPages } from './word-pages';
import type { WornPicture } from './worn-ink';

/** A draft, and the toy in it where there is a picture. */
export type Listed = { readonly draft: Draft; readonly worn?: WornPicture | undefined };

type Size = { readonly width: Mm; readonly height: Mm };

/** Points. */
const TEXT_PT = 10;
/** In large print labels are as wide as the page lets them be. */
const LARGER = 1.65;
/** Between the words and the labels, and between labels, mm. */
const BETWEEN_MM = 6;

export function listInk(listed: readonly Listed[], page: Size, lettering: Lettering): readonly (readonly Ink[])[] {
  const { say, units, widthOf } = lettering;
  const room = roomIn(page);
  const words: readonly Paragraph[] = [
    ...(listed.length > 1
      ? togetherWords(
          listed.map(({ draft }) => draft),
          say,
          units,
        )
      : []),
    ...listed.flatMap(({ draft }) => listWords(draft, say, units)),
  ];
  const by = widthOf.print === 'large' ? LARGER : 1;
  const set = wordPages(words, page, Math.max(TEXT_PT, smallestOf(widthOf)), widthOf);
  const pages = set.pages.map((ink) => [...ink]);
  let y = set.end + BETWEEN_MM;
  for (const { draft, worn } of listed) {
    if (y + BAG_LABEL.height * by > room.y + room.height) {
      pages.push([]);
      y = room.y;
    }
    const label = bagLabelInk(draft, { x: 0, y: 0 }, { ...lettering, worn });
    pages[pages.length - 1]?.push(...magnified(label, by, { x: room.x, y }));
    y += BAG_LABEL.height * by + BETWEEN_MM;
  }
  return pages;
}
