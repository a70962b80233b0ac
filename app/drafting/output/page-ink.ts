import type { Draft } from '../draft-types';
import type { Layout, Page, Placed } from '../sheets/layout';
import { moved } from '../sheets/move';
import { furnished, withInk } from './boards';
import { clippedInk } from './clip';
import { coverInk } from './cover-ink';
import type { Ink } from './ink';
import { hasNap } from './label';
import { labelsInk } from './labels-ink';
import type { Lettering } from './lettering';
import { notesInk } from './notes-ink';
import { pieceInk } from './piece-ink';
import { stripInk } from './strip-ink';
import { tileInk } from './tile-ink';

/** All ink of one page, in true millimetres from its top left corner. */
export function pageInk(draft: Draft, layout: Layout, page: Page, wording: Lettering): readonly Ink[] {
  const { say, widthOf } = wording;
  const pieces = page.placed.flatMap((placed) => placedInk(draft, placed, wording));
  const free = furnished(page);
  return [
    ...pieces,
    ...(page.tile ? tileInk(page.tile, withInk(free, pieces, widthOf), say, widthOf) : []),
    ...labelsInk(draft, layout, { page, free, words: pieces.filter((ink) => ink.kind === 'words') }, wording),
    ...stripInk(draft, layout, page, say, widthOf),
    ...(page.notes ? notesInk(draft, page.notes, wording) : []),
    ...(page.cover ? coverInk(draft, layout, page.cover, wording) : []),
  ];
}

function placedInk(draft: Draft, placed: Placed, { say, units, widthOf }: Lettering): readonly Ink[] {
  const piece = draft.pieces[placed.piece];
  if (!piece) return [];
  const drawn = { piece, whole: placed.whole, nap: hasNap(draft), to: moved(placed.move), units };
  const ink = pieceInk(drawn, say, widthOf);
  return placed.window ? clippedInk(ink, placed.window, widthOf) : ink;
}
