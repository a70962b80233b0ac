// Furniture within pieces before these are laid: wherever such a piece then goes, it takes along what it holds.

import type { Draft } from '../draft-types';
import { type Board, blockBox } from '../packing';
import { fitsOn, roomsWithin } from './among';
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
type Room = { readonly turned: Fitting; readonly boards: readonly Board[]; readonly holds: readonly Laid<Loose>[] };

/** The largest furniture goes into the first piece that has room for it, in as many of its turns as have. */
export function held(
  draft: Draft,
  area: Area,
  fitting: readonly (readonly Fitting[])[],
  furniture: readonly (readonly Loose[])[],
): Held {
  const pieces = fitting.map((turns) =>
    turns.map((turned): Room => ({ turned, boards: roomsWithin(draft, area, { turned, x: 0, y: 0 }), holds: [] })),
  );
  const largestFirst = [...furniture].sort((a, b) => looseArea(b) - looseArea(a));
  const rest = largestFirst.filter((sizes) => {
    for (const [index, rooms] of pieces.entries()) {
      const holding = rooms.flatMap((room) => withOne(room, sizes));
      if (holding.length === 0) continue;
      pieces[index] = holding;
      return false;
    }
    return true;
  });
  const items = pieces.map((rooms) => rooms.map(({ turned }) => turned));
  return { items, rest, holds: new Map(pieces.flat().map(({ turned, holds }) => [turned, holds])) };
}

const CORNER = { x: 0, y: 0 };

function withOne({ turned, boards, holds }: Room, sizes: readonly Loose[]): readonly Room[] {
  for (const [index, board] of boards.entries()) {
    const laid = fitsOn(board, sizes, 0, CORNER);
    if (!laid) continue;
    const { x, y } = laid;
    const { width, height } = laid.turned.rows;
    const left = boards.map((each, at) => (at === index ? blockBox(board, { x, y, width, height }, CLEAR_MM) : each));
    return [{ turned, boards: left, holds: [...holds, laid] }];
  }
  return [];
}

/** What is laid, and what it holds, in their places. */
export function unfolded(laid: Laid, holds: Held['holds']): readonly Laid[] {
  const within = holds.get(laid.turned) ?? [];
  return [laid, ...within.map(({ turned, x, y }) => ({ turned, x: laid.x + x, y: laid.y + y }))];
}
