import type { Draft, Piece } from '../draft-types';
import { distance, type Point } from '../geometry';
import { ownerOf } from '../outfit';
import { type Board, blockBox } from '../packing';
import type { Layout, Page, Placed } from '../sheets/layout';
import { CLEAR_MM, withMarks } from '../sheets/marks';
import { moved } from '../sheets/move';
import { furnished, outlineOn, withInk, withinWindow, withPieces } from './boards';
import type { Paragraph } from './flow';
import type { Ink, TextWidth } from './ink';
import { labelOf, largeLabels } from './label';
import { type Label, labelBeside, labelInside } from './label-room';
import type { Lettering } from './lettering';
import { middleOf } from './middle';

/** What a label may say, the fullest first. */
type Wordings = readonly (readonly Paragraph[])[];

/** The least a piece must say, where no room was kept beside it for more: its name, and how many to cut; its edges say the rest. */
const bare = (paragraphs: readonly Paragraph[]): readonly Paragraph[] => paragraphs.slice(0, 2);

function firstInside(all: Wordings, outline: readonly Point[], lines: Board, widthOf: TextWidth): Label | undefined {
  for (const paragraphs of all) {
    const label = labelInside(paragraphs, outline, lines, widthOf);
    if (label) return label;
  }
  return undefined;
}

/** A page as labels see it: what it holds, its board with the furniture taken, and the words its pieces bear already. */
export type Labelled = { readonly page: Page; readonly free: Board; readonly words: readonly Ink[] };

/** The draft that labels tell of, and its pieces as the paper shows them. */
export type Forms = { readonly told: Draft; readonly shown: Draft };

/** The labels of a layout's pages, one page after another; which page bears a tiled piece's whole label is found once. */
export function labeller(forms: Forms, layout: Layout, wording: Lettering): (on: Labelled) => readonly Ink[] {
  const holders = new Map<number, OnTile | undefined>();
  return (on) => labelsInk(forms, layout, on, wording, holders);
}

/** The labels of a page, one after another: each takes its place from those that follow. */
function labelsInk(
  { told, shown }: Forms,
  layout: Layout,
  on: Labelled,
  wording: Lettering,
  holders: Map<number, OnTile | undefined>,
): readonly Ink[] {
  const { page } = on;
  const free = withInk(on.free, on.words, wording.widthOf);
  const done: Label[] = [];
  // Most labels lie in their piece: what is left beside the pieces is only looked at by those that do not.
  const left = (): Board =>
    done.reduce(
      (board, label) => withInk(blockBox(board, label.box, CLEAR_MM), label.ink, wording.widthOf),
      page.placed.reduce(withRoom, withPieces(free, shown, page)),
    );
  for (const placed of page.placed) {
    const piece = shown.pieces[placed.piece];
    const whole = told.pieces[placed.piece];
    if (!piece || !whole) continue;
    const said = {
      draft: ownerOf(told, placed.piece),
      piece: whole,
      whole: placed.whole,
      form: layout.form,
      units: wording.units,
    };
    const all = layout.print === 'large' ? largeLabels(said, placed.piece, wording.say) : [labelOf(said, wording.say)];
    const label = placed.window
      ? tileLabel(layout, page, piece, placed, all, left, wording, holders)
      : pieceLabel(free, piece, placed, all, left, wording.widthOf);
    if (label) done.push(label);
  }
  // Lines to pieces come last: they keep clear of every label, and of each other.
  const ink = done.flatMap((label) => label.ink);
  for (const { lead } of done) ink.push(...(lead?.([...on.words, ...ink]) ?? []));
  return ink;
}

/** What was kept for a piece's label is no other's. */
const withRoom = (board: Board, { room }: Placed): Board => (room ? blockBox(board, room, CLEAR_MM) : board);

function pieceLabel(
  free: Board,
  piece: Piece,
  placed: Placed,
  all: Wordings,
  beside: () => Board,
  widthOf: TextWidth,
): Label {
  const outline = outlineOn(piece.seamLine, placed);
  const lines = withMarks(free, piece, placed.whole, moved(placed.move), widthOf.print);
  const inside = firstInside(placed.room ? all : [...all, ...all.map(bare)], outline, lines, widthOf);
  return inside ?? labelBeside(all.at(-1) ?? [], { outline, lines }, { page: beside, room: placed.room }, widthOf);
}

/** The whole label on the page nearest the piece's middle that holds it; on the others, piece and page. */
function tileLabel(
  layout: Layout,
  page: Page,
  piece: Piece,
  placed: Placed,
  all: Wordings,
  beside: () => Board,
  { say, widthOf }: Lettering,
  holders: Map<number, OnTile | undefined>,
): Label | undefined {
  const inside = (on: Page, where: Placed, said: Wordings): Label | undefined => {
    const lines = withMarks(furnished(on), piece, where.whole, moved(where.move), widthOf.print);
    const window = where.window ? withinWindow(lines, where.window) : lines;
    return firstInside(said, outlineOn(piece.seamLine, where), window, widthOf);
  };
  const tiles = tilesOf(layout, piece, placed.piece);
  if (!holders.has(placed.piece)) {
    holders.set(
      placed.piece,
      tiles.find((each) => inside(each.page, each.placed, all)),
    );
  }
  const holder = holders.get(placed.piece);
  if (holder?.page === page) return inside(page, placed, all);
  const outline = outlineOn(piece.seamLine, placed);
  if (!holder && tiles[0]?.page === page) {
    const lines = withinWindow(
      furnished(page),
      page.tile?.window ?? { x: 0, y: 0, width: page.width, height: page.height },
    );
    return labelBeside(all.at(-1) ?? [], { outline, lines }, { page: beside, room: undefined }, widthOf);
  }
  const title = say('print.tile-title', { name: page.name, piece: say(`piece.${piece.name}`) });
  return inside(page, placed, [[{ text: title, bold: true }], ...all.slice(1).slice(-1)]);
}

type OnTile = { readonly page: Page; readonly placed: Placed };

/** The pages a piece is tiled over, those nearest its middle first. */
function tilesOf(layout: Layout, piece: Piece, index: number): readonly OnTile[] {
  const tiles = layout.pages.flatMap((page): OnTile[] => {
    const placed = page.placed.find((each) => each.piece === index && each.window);
    return placed ? [{ page, placed }] : [];
  });
  const away = ({ placed }: OnTile): number => {
    const { x = 0, y = 0, width = 0, height = 0 } = placed.window ?? {};
    const centre: Point = { x: x + width / 2, y: y + height / 2 };
    return distance(centre, middleOf(outlineOn(piece.seamLine, placed)));
  };
  return [...tiles].sort((a, b) => away(a) - away(b));
}
