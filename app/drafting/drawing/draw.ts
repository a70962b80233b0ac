import type { Mm } from '../../body';
import type { Shape } from '../blocks/block';
import { pathLength } from '../geometry';
import { active, type Garment, type Look, type PieceRow } from '../rows/garment';
import type { Sizes, Wearer } from '../sizes/wearer';

/** All pieces of a garment drawn with one set of sizes. */
export type Drawing = Look & { readonly rows: readonly PieceRow[]; readonly drawn: ReadonlyMap<string, DrawnPiece> };

/** One piece's seam lines, and what it was drawn from, so that it need not be drawn again. */
export type DrawnPiece = {
  readonly row: PieceRow;
  readonly fed: Sizes;
  readonly shape: Shape;
  readonly lengths: Map<string, Mm>;
};

/**
 * Draws the garment's pieces in the order of their rows; a row may take sizes from edges drawn before it. Pieces fed as
 * in `before`, drawn with the same choices, are taken from there: turning one knob redraws only what hangs on it.
 */
export function draw(garment: Garment, wearer: Wearer, start: Sizes, before?: Drawing): Drawing {
  const drawn = new Map<string, DrawnPiece>();
  const sizes: Record<string, Mm> = { ...start };
  const length = (piece: string, edge: string): Mm => edgeLength(drawn, piece, edge);
  const look = { sizes, choices: wearer.choices, wearer, length };
  const rows = before?.rows ?? active(garment.pieces, wearer.choices);
  for (const row of rows) {
    if (row.takes) Object.assign(sizes, row.takes(look));
    const earlier = before?.drawn.get(row.name);
    drawn.set(row.name, earlier && isFedAlike(earlier, sizes) ? earlier : drawPiece(row, sizes));
  }
  return { ...look, rows, drawn };
}

/** What a block's own size name is fed from. */
function sizeOf(row: PieceRow, name: string, sizes: Sizes): Mm {
  return sizes[row.sizes?.[name] ?? name] ?? 0;
}

function isFedAlike({ row, fed }: DrawnPiece, sizes: Sizes): boolean {
  return row.block.sizes.every((name) => fed[name] === sizeOf(row, name, sizes));
}

function drawPiece(row: PieceRow, sizes: Sizes): DrawnPiece {
  const fed = Object.fromEntries(row.block.sizes.map((name) => [name, sizeOf(row, name, sizes)]));
  return { row, fed, shape: row.block.draw(fed), lengths: new Map() };
}

function edgeLength(drawn: ReadonlyMap<string, DrawnPiece>, piece: string, edge: string): Mm {
  const found = drawn.get(piece);
  const path = found?.shape.edges[edge] ?? found?.shape.lines[edge];
  if (!found || !path) throw new RangeError(`no such edge: ${piece}.${edge}`);
  const known = found.lengths.get(edge);
  if (known !== undefined) return known;
  const length = pathLength(path);
  found.lengths.set(edge, length);
  return length;
}
