import { type Board, blockRows, highestPlace } from '../packing';
import type { Fitting } from './figure';

/** A turned figure and its top left corner on the board. */
export type Laid = { readonly turned: Fitting; readonly x: number; readonly y: number };

/** A page being filled. `plain` keeps its strip free; `bare` is for a piece that needs the whole page. */
export type Sheet = {
  readonly kind: 'first' | 'tile' | 'plain' | 'bare';
  readonly board: Board;
  readonly laid: readonly Laid[];
};

/** The boards pages start from. */
export type Fresh = { readonly plain: Board; readonly bare: Board };

/**
 * Lays figures one after another on the first sheet that has room for one of its turns, the turn that ends highest;
 * opens a new sheet where none has. Each figure is given by all its turns; each fits a bare board.
 */
export function fill(
  figures: readonly (readonly Fitting[])[],
  started: readonly Sheet[],
  fresh: Fresh,
): readonly Sheet[] {
  const sheets = [...started];
  for (const turns of figures) {
    const at = sheets.findIndex((sheet, index) => {
      const next = layOn(sheet, turns);
      if (next) sheets[index] = next;
      return next !== undefined;
    });
    if (at < 0) sheets.push(layOnNew(turns, fresh));
  }
  return sheets;
}

/** How far down a sheet is used, mm. */
export function bottomOf(sheet: Sheet): number {
  return Math.max(0, ...sheet.laid.map(({ turned, y }) => y + turned.rows.height));
}

function layOn(sheet: Sheet, turns: readonly Fitting[]): Sheet | undefined {
  let best: Laid | undefined;
  for (const turned of turns) {
    const limit = best ? best.y + best.turned.rows.height - turned.rows.height + 1 : Infinity;
    const place = highestPlace(sheet.board, turned.stamp, limit);
    if (place && (!best || endsHigher({ turned, ...place }, best))) best = { turned, ...place };
  }
  if (!best) return undefined;
  const board = blockRows(sheet.board, best.turned.rows, best.x, best.y);
  return { ...sheet, board, laid: [...sheet.laid, best] };
}

function layOnNew(turns: readonly Fitting[], fresh: Fresh): Sheet {
  const plain = layOn({ kind: 'plain', board: fresh.plain, laid: [] }, turns);
  const bare: Sheet = { kind: 'bare', board: fresh.bare, laid: [] };
  return plain ?? layOn(bare, turns) ?? bare;
}

function endsHigher(a: Laid, b: Laid): boolean {
  const bottomA = a.y + a.turned.rows.height;
  const bottomB = b.y + b.turned.rows.height;
  return bottomA < bottomB || (bottomA === bottomB && a.x < b.x);
}
