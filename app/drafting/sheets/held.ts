// Furniture within pieces before these are laid: wherever such a piece then goes, it takes along what it holds.

import type { Draft } from '../draft-types';
import { type Board, blockBox } from '../packing';
import { fitsOn, freeWithin, labelWithin } from './among';
import type { Area } from './area';
import type { Fitting } from './figure';
import type { Item, Laid } from './fill';
import { type Loose, looseArea } from './loose';
import { CLEAR_MM } from './marks';
import type { Turns } from './search';

/** Pieces only in the turns in which they hold what they do, furniture that no piece holds, and what each turn holds, from its corner. */
export type Held = {
  readonly items: readonly Turns[];
  readonly rest: readonly (readonly Loose[])[];
  readonly holds: ReadonlyMap<Item, readonly Laid<Loose>[]>;
};

/** A piece in one turn: what is still free within it, and what it holds. */
type Room = { readonly turned: Fitting; readonly board: Board; readonly holds: readonly Laid<Loose>[] };

/** The largest furniture goes into the first piece that has room for it, in as many of its turns as have. */
export function held(
  draft: Draft,
  area: Area,
  fitting: readonly (readonly Fitting[])[],
  furniture: readonly (readonly Loose[])[],
): Held {
  const pieces = fitting.map((turns) =>
    turns.flatMap((turned): Room[] => {
      const board = freeWithin(draft, area, { turned, x: 0, y: 0 });
      return board ? [{ turned, board, holds: [] }] : [];
    }),
  );
  const largestFirst = [...furniture].sort((a, b) => looseArea(b) - looseArea(a));
  const rest = largestFirst.filter((sizes) => {
    for (const [index, rooms] of pieces.entries()) {
      const holding = rooms.flatMap((room) => withOne(room, sizes, area));
      if (holding.length === 0) continue;
      pieces[index] = holding;
      return false;
    }
    return true;
  });
  const items = pieces.map((rooms) => rooms.map(({ turned }) => turned));
  return { items, rest, holds: new Map(pieces.flat().map(({ turned, holds }) => [turned, holds])) };
}

/** Where the piece then still has room for its label. */
function withOne({ turned, board, holds }: Room, sizes: readonly Loose[], area: Area): readonly Room[] {
  for (const size of sizes) {
    for (const wish of wishes(turned)) {
      const laid = fitsOn(board, [size], 0, wish);
      if (!laid) break;
      const { width, height } = laid.turned.rows;
      const left = blockBox(board, { x: laid.x, y: laid.y, width, height }, CLEAR_MM);
      const hasLabel = turned.figure.labelBeside || labelWithin(left, { turned, x: 0, y: 0 }, area);
      if (hasLabel) return [{ turned, board: left, holds: [...holds, laid] }];
    }
  }
  return [];
}

/** The corners of the piece's box. */
function wishes({ rows: { width, height } }: Fitting) {
  return [0, height].flatMap((y) => [0, width].map((x) => ({ x, y })));
}

/** What is laid, and what it holds, in their places. */
export function unfolded(laid: Laid, holds: Held['holds']): readonly Laid[] {
  const within = holds.get(laid.turned) ?? [];
  return [laid, ...within.map(({ turned, x, y }) => ({ turned, x: laid.x + x, y: laid.y + y }))];
}
