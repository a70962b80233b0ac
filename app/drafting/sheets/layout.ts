import type { Mm } from '../../body';
import type { Point } from '../geometry';
import type { Box } from '../packing';
import type { Form } from './forms';
import type { Paper } from './papers';
import type { Print } from './prints';

/** Where a piece lies: turned about its own origin (radians, clockwise as seen), then shifted to x, y on the page. */
export type Move = { readonly turn: number; readonly x: Mm; readonly y: Mm };

/** A piece on a page. `whole`: unfolded, both halves; `room`: kept free beside it for its label; `window`: what a tile shows. */
export type Placed = {
  readonly piece: number;
  readonly whole: boolean;
  readonly move: Move;
  readonly room?: Box;
  readonly window?: Box;
};

/** A line to lay a ruler on, exactly as long as its name says. */
export type CheckLine = { readonly from: Point; readonly to: Point };

/** What every page carries: a few words, a 50 mm line and a 2 in line. */
export type Strip = { readonly words: Box; readonly millimetres: CheckLine; readonly inches: CheckLine };

/** A page of a piece larger than the paper. `joins` names the page beyond each side; `crosses` lie on the same spot of both. */
export type Tile = {
  readonly piece: number;
  readonly row: number;
  readonly column: number;
  readonly window: Box;
  readonly joins: { readonly left?: string; readonly right?: string; readonly up?: string; readonly down?: string };
  readonly crosses: readonly Point[];
};

/** One page drawn small. */
export type MapCell = { readonly page: number; readonly box: Box };

/** What only the first page carries: whose pattern it is, and where there is more than one page, all of them small. */
export type Cover = { readonly width: Mm; readonly title: Box; readonly map: readonly MapCell[] };

/** Where the words lie; `cared`: those on care are among them; `keyed`: the key of lines and notches follows them. */
export type Notes = { readonly words: Box; readonly cared: boolean; readonly keyed: boolean };

/**
 * What proves the print and tells of the whole, each on one page: the first, unless that cost another. `card` is the outline
 * of an ISO/IEC 7810 ID-1 card, `square` 50 mm each way, within it where room is short, `long` a line of 200 mm, since a short
 * one read to half a millimetre proves 1 %; `joining` is for words on joining tiles, where there are any, `notes` for what is
 * said beside the pieces, `care` and `key` for what of it lies apart.
 */
export type Furniture = {
  readonly card?: Box;
  readonly square?: Box;
  /** For what to do when a print is wrong, where the card has the square in it and no room. */
  readonly wrong?: Box;
  readonly joining?: Box;
  readonly long?: CheckLine;
  readonly notes?: Notes;
  readonly care?: Box;
  readonly key?: Box;
};

export type Page = Furniture & {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly placed: readonly Placed[];
  readonly strip: Strip;
  readonly tile?: Tile;
  readonly cover?: Cover;
};

/**
 * Sheets as data, in true millimetres from each page's top left corner, so that print and screen draw the same.
 * `form` is what the paper shows of each piece, `print` how large words and lines are: large pages have no cover, what it
 * would say is told on pages of words;  `correction` what everything is drawn larger by (1 where the printer is true): the pages here are the paper over it.
 */
export type Layout = {
  readonly paper: Paper;
  readonly form: Form;
  readonly print: Print;
  readonly correction: number;
  readonly pages: readonly Page[];
  /** No arrangement could use fewer pages; a bound, which there may be no arrangement for. */
  readonly least: number;
};
