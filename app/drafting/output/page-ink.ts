import type { Draft } from '../draft-types';
import { ownerOf } from '../outfit';
import { formed } from '../sheets/forms';
import type { Layout, Page, Placed } from '../sheets/layout';
import { moved } from '../sheets/move';
import { furnished, withInk } from './boards';
import { clippedInk } from './clip';
import { coverInk } from './cover-ink';
import { letteredOf, lettersInk } from './edge-letters';
import { furnitureInk } from './furniture-ink';
import type { Ink } from './ink';
import { keyInk } from './key-ink';
import { hasNap } from './label';
import { type Forms, labeller } from './labels-ink';
import type { Lettering } from './lettering';
import { careInk, notesInk } from './notes-ink';
import { pieceInk } from './piece-ink';
import { saidOnce } from './said-once';
import { stripInk } from './strip-ink';
import { crossInk, tileInk } from './tile-ink';

/** The ink of a layout's pages, each in true millimetres from its top left corner. */
export function pagesInk(draft: Draft, layout: Layout, wording: Lettering): (page: Page) => readonly Ink[] {
  const forms: Forms = { told: draft, shown: formed(draft, layout.form) };
  const once = { ...wording, say: saidOnce(wording.say) };
  const labels = labeller(forms, layout, once);
  return (page) => pageInk(forms, layout, page, once, labels);
}

function pageInk(
  forms: Forms,
  layout: Layout,
  page: Page,
  wording: Lettering,
  labelsOn: ReturnType<typeof labeller>,
): readonly Ink[] {
  const { told, shown } = forms;
  const { say, widthOf } = wording;
  const crosses = page.tile?.crosses.flatMap(crossInk) ?? [];
  const pieces = page.placed.flatMap((placed) => placedInk(shown, placed, wording, crosses));
  const furniture = [
    ...stripInk(told, layout, page, say, widthOf),
    ...(page.notes ? notesInk(told, page.notes, layout.form, wording) : []),
    ...(page.care ? careInk(page.care, wording) : []),
    ...(page.key ? keyInk(page.key, layout.form, wording) : []),
    ...coverInk(shown, layout, page, wording),
    ...furnitureInk(page, wording),
  ];
  const words = [...pieces, ...furniture].filter((ink) => ink.kind === 'words');
  const free = furnished(page);
  const labels = labelsOn({ page, free, words });
  return [
    ...pieces,
    ...(page.tile ? tileInk(page.tile, withInk(free, pieces, widthOf), say, widthOf) : []),
    ...labels,
    ...(layout.print === 'large' ? edgeLetters(forms, page, [...pieces, ...labels], wording) : []),
    ...furniture,
  ];
}

function edgeLetters({ told, shown }: Forms, page: Page, ink: readonly Ink[], { say, units, widthOf }: Lettering) {
  return page.placed.flatMap((placed) => {
    const [piece, own] = [shown.pieces[placed.piece], told.pieces[placed.piece]];
    const on = piece && own && { shown: piece, lettered: letteredOf(own, say, units) };
    return on ? lettersInk(on, page, placed, ink, widthOf) : [];
  });
}

function placedInk(
  draft: Draft,
  placed: Placed,
  { say, units, widthOf }: Lettering,
  beside: readonly Ink[],
): readonly Ink[] {
  const piece = draft.pieces[placed.piece];
  if (!piece) return [];
  const drawn = {
    piece,
    whole: placed.whole,
    nap: hasNap(ownerOf(draft, placed.piece)),
    to: moved(placed.move),
    units,
  };
  const ink = pieceInk(drawn, say, widthOf, beside);
  return placed.window ? clippedInk(ink, placed.window, widthOf) : ink;
}
