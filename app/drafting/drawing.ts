import type { Mm } from '../body';
import { active, type Garment, type Look, type PieceRow, type Shape } from './garments/garment';
import { pathLength } from './geometry';
import type { Sizes, Wearer } from './sizes/wearer';

/** All pieces of a garment drawn with one set of sizes. */
export type Drawing = Look & { readonly drawn: ReadonlyMap<string, Drawn> };

/** One piece's seam lines, and what it was drawn from, so that it need not be drawn again. */
export type Drawn = {
  readonly row: PieceRow;
  readonly fed: Sizes;
  readonly shape: Shape;
  readonly lengths: Map<string, Mm>;
};

/**
 * Draws the garment's pieces in the order of their rows; a row may take sizes from edges drawn before it. Pieces fed as
 * in `before` are taken from there: turning one knob redraws only what hangs on it.
 */
export function draw(garment: Garment, wearer: Wearer, start: Sizes, before?: Drawing): Drawing {
  const drawn = new Map<string, Drawn>();
  const sizes: Record<string, Mm> = { ...start };
  const length = (piece: string, edge: string): Mm => edgeLength(drawn, piece, edge);
  const look = { sizes, choices: wearer.choices, wearer, length };
  for (const row of active(garment.pieces, wearer.choices)) {
    if (row.takes) Object.assign(sizes, row.takes(look));
    const fed = feed(row, sizes);
    const earlier = before?.drawn.get(row.name);
    const same = earlier && earlier.row === row && row.block.sizes.every((name) => earlier.fed[name] === fed[name]);
    drawn.set(row.name, same ? earlier : { row, fed, shape: row.block.draw(fed), lengths: new Map() });
  }
  return { ...look, drawn };
}

/** The block's own size names, fed from the finished sizes. */
function feed(row: PieceRow, sizes: Sizes): Sizes {
  return Object.fromEntries(row.block.sizes.map((name) => [name, sizes[row.sizes?.[name] ?? name] ?? 0]));
}

function edgeLength(drawn: ReadonlyMap<string, Drawn>, piece: string, edge: string): Mm {
  const found = drawn.get(piece);
  const path = found?.shape.edges[edge] ?? found?.shape.lines[edge];
  if (!found || !path) throw new RangeError(`no such edge: ${piece}.${edge}`);
  const known = found.lengths.get(edge);
  if (known !== undefined) return known;
  const length = pathLength(path);
  found.lengths.set(edge, length);
  return length;
}
