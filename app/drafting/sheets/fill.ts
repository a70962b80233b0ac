import { type Board, blockRows, highestPlace } from '../packing';
import type { Fitting } from './figure';
import type { Loose } from './loose';

/** What is laid: a turned figure, or a box of furniture. */
export type Item = Fitting | Loose;

/** An item and its top left corner on the board. */
export type Laid<One extends Item = Item> = { readonly turned: One; readonly x: number; readonly y: number };

/** A page being filled. `plain` keeps its strip free; `bare` is for a piece that needs the whole page; `empty`: before anything was laid. */
export type Sheet = {
  readonly kind: 'first' | 'tile' | 'plain' | 'bare';
  readonly empty: Board;
  readonly board: Board;
  readonly laid: readonly Laid[];
};

export function isFigure(laid: Laid): laid is Laid<Fitting> {
  return 'figure' in laid.turned;
}

export function isLoose(laid: Laid): laid is Laid<Loose> {
  return 'kind' in laid.turned;
}

export function freshSheet(kind: Sheet['kind'], empty: Board): Sheet {
  return { kind, empty, board: empty, laid: [] };
}

/** The sheet with just that laid on it. */
export function relaid({ kind, empty }: Sheet, laid: readonly Laid[]): Sheet {
  return withLaid(freshSheet(kind, empty), laid);
}

/** The boards pages start from; `alone`: a piece that needs the whole page has it to itself, for a large strip wants what is left. */
export type Fresh = { readonly plain: Board; readonly bare: Board; readonly alone: boolean };

/**
 * Lays items one after another on the first sheet that has room for one of its turns, the turn that ends highest;
 * opens a new sheet where none has. Each item is given by all its turns; each fits a bare board.
 */
export function fill(items: readonly (readonly Item[])[], started: readonly Sheet[], fresh: Fresh): readonly Sheet[] {
  const sheets = [...started];
  for (const turns of items) {
    const at = sheets.findIndex((sheet, index) => {
      const next = sheet.kind === 'bare' && fresh.alone ? undefined : layOn(sheet, turns);
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

function layOn(sheet: Sheet, turns: readonly Item[]): Sheet | undefined {
  if (sheet.kind === 'bare' && turns.some((turned) => 'kind' in turned)) return undefined;
  let best: Laid | undefined;
  for (const turned of turns) {
    const limit = best ? best.y + best.turned.rows.height - turned.rows.height + 1 : Infinity;
    const place = highestPlace(sheet.board, turned.stamp, limit);
    if (place && (!best || endsHigher({ turned, ...place }, best))) best = { turned, ...place };
  }
  if (!best) return undefined;
  return withLaid(sheet, [best]);
}

/** The sheet with more laid on it. */
export function withLaid(sheet: Sheet, more: readonly Laid[]): Sheet {
  const board = more.reduce((left, { turned, x, y }) => blockRows(left, turned.rows, x, y), sheet.board);
  return { ...sheet, board, laid: [...sheet.laid, ...more] };
}

function layOnNew(turns: readonly Item[], fresh: Fresh): Sheet {
  const plain = layOn(freshSheet('plain', fresh.plain), turns);
  const bare = freshSheet('bare', fresh.bare);
  return plain ?? layOn(bare, turns) ?? bare;
}

function endsHigher(a: Laid, b: Laid): boolean {
  const bottomA = a.y + a.turned.rows.height;
  const bottomB = b.y + b.turned.rows.height;
  return bottomA < bottomB || (bottomA === bottomB && a.x < b.x);
}
