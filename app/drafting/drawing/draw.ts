import type { Mm } from '../../body';
import type { Fed, Shape } from '../blocks/block';
import { pathLength } from '../geometry';
import { active, type Garment } from '../rows/garment';
import type { Look } from '../rows/names';
import type { PieceRow } from '../rows/piece-row';
import type { AnyNames } from '../rows/rows';
import { known, type Sizes } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';

/** All pieces of a garment drawn with one set of sizes. */
export type Drawing = Look<AnyNames> & {
  /** The same sizes as plain data: nothing is thrown where one is missing. */
  readonly made: Sizes;
  readonly rows: readonly PieceRow<AnyNames>[];
  readonly drawn: ReadonlyMap<string, DrawnPiece>;
  /** Length of an edge or line of a piece, mm. */
  readonly edgeLength: (piece: string, edge: string) => Mm;
};

/** One piece's seam lines, and what it was drawn from, so that it need not be drawn again. */
export type DrawnPiece = {
  readonly row: PieceRow<AnyNames>;
  readonly fed: Fed<string, string>;
  readonly shape: Shape;
  readonly lengths: Map<string, Mm>;
};

/** What pieces are drawn from. */
export type From = { readonly wearer: Wearer<AnyNames['choices']>; readonly slit: Mm | null };

/**
 * Draws the garment's pieces in the order of their rows; a row may take sizes from edges drawn before it. Pieces fed as
 * in `before`, drawn with the same choices, are taken from there: turning one knob redraws only what hangs on it.
 */
export function draw(garment: Garment, { wearer, slit }: From, start: Sizes, before?: Drawing): Drawing {
  const drawn = new Map<string, DrawnPiece>();
  const made: Record<string, Mm> = { ...start };
  const edgeLength = (piece: string, edge: string): Mm => lengthOf(drawn, piece, edge);
  const length = (name: string): Mm => {
    const dot = name.indexOf('.');
    return edgeLength(name.slice(0, dot), name.slice(dot + 1));
  };
  const look = { sizes: known(made), choices: wearer.choices, wearer, slit, length };
  const rows = before?.rows ?? active(garment.pieces, wearer.choices);
  for (const row of rows) {
    if (row.takes) Object.assign(made, row.takes(look));
    const fed = fedTo(row, look);
    const earlier = before?.drawn.get(row.name);
    drawn.set(row.name, earlier && isFedAlike(earlier, fed) ? earlier : drawPiece(row, fed));
  }
  return { ...look, made, rows, drawn, edgeLength };
}

/** What a row's block is fed: by name, by number or from edges already drawn; null what it may do without. */
function fedTo(row: PieceRow<AnyNames>, look: Look<AnyNames>): Fed<string, string> {
  const fed: Record<string, Mm | null> = {};
  for (const name of row.block.sizes) {
    const size = sizeOf(row, name, look);
    if (size === null || !Number.isFinite(size)) throw new RangeError(`${row.name} is not fed: ${name}`);
    fed[name] = size;
  }
  for (const name of row.block.optional) fed[name] = name in row.sizes ? sizeOf(row, name, look) : null;
  return fed as Fed<string, string>;
}

function sizeOf(row: PieceRow<AnyNames>, name: string, look: Look<AnyNames>): Mm | null {
  const from = row.sizes[name];
  if (typeof from === 'function') return from(look);
  if (typeof from === 'number' || from === null) return from;
  // A size that `known` does not have is thrown there.
  return look.sizes[from ?? name] as Mm;
}

function isFedAlike({ row, fed: before }: DrawnPiece, fed: Fed<string, string>): boolean {
  return [...row.block.sizes, ...row.block.optional].every((name) => before[name] === fed[name]);
}

function drawPiece(row: PieceRow<AnyNames>, fed: Fed<string, string>): DrawnPiece {
  const shape = row.block.draw(fed);
  for (const name of Object.keys(shape.edges))
    if (!row.block.edges.includes(name))
      throw new RangeError(`${row.name} has an edge its block does not name: ${name}`);
  return { row, fed, shape, lengths: new Map() };
}

function lengthOf(drawn: ReadonlyMap<string, DrawnPiece>, piece: string, edge: string): Mm {
  const found = drawn.get(piece);
  const path = found?.shape.edges[edge] ?? found?.shape.lines[edge];
  if (!found || !path) throw new RangeError(`no such edge: ${piece}.${edge}`);
  const before = found.lengths.get(edge);
  if (before !== undefined) return before;
  const length = pathLength(path);
  found.lengths.set(edge, length);
  return length;
}
