import type { Say } from '../../body';
import type { Draft } from '../draft-types';
import { howMany } from '../pieces/how-many';
import { type Layout, LONG_MM, type Page, type Tile } from '../sheets';

/** Sides of a page, as joining pages lie. */
const SIDES = ['left', 'right', 'up', 'down'] as const;

/** What lies on a page, a sentence each: pieces, or which part of one and what joins it; then what else is printed there. */
export function pageTold(draft: Draft, { pages, form }: Layout, page: Page, say: Say): readonly string[] {
  return [
    ...page.placed.flatMap(({ piece, whole }) => {
      const drawn = draft.pieces[piece];
      if (!drawn) return [];
      const name = say(`piece.${drawn.name}`);
      if (page.tile) return tileTold(name, page, page.tile, pages, say);
      return [say('list.named', { name, what: howMany(drawn, whole || form === 'card', say) })];
    }),
    ...[
      page.cover && 'told.cover',
      page.wrong && 'print.wrong-title',
      page.joining && 'print.joining-title',
      page.notes && 'print.how-title',
      (page.care || page.notes?.cared) && 'print.care-title',
      page.long && 'told.long',
      page.card && 'print.card',
    ].flatMap((code) => (code ? [say(code, { length: LONG_MM })] : [])),
  ];
}

/** Which part of a piece, what is printed on it, and which pages join it where. */
const tileTold = (name: string, page: Page, tile: Tile, pages: readonly Page[], say: Say): readonly string[] => [
  say('told.part', { name, ...placeOf(tile, pages) }),
  say('told.marked', { name: page.name }),
  ...SIDES.flatMap((side) =>
    tile.joins[side] === undefined ? [] : [say(`told.joins.${side}`, { page: tile.joins[side] })],
  ),
];

/** Which row and column of its piece a part is, counted from the top left. */
function placeOf(tile: Tile, pages: readonly Page[]) {
  const parts = pages.flatMap((page) => (page.tile?.piece === tile.piece ? [page.tile] : []));
  const first = Math.min(...parts.map(({ row }) => row));
  return {
    row: tile.row - first + 1,
    rows: Math.max(...parts.map(({ row }) => row)) - first + 1,
    column: tile.column + 1,
    columns: Math.max(...parts.map(({ column }) => column)) + 1,
  };
}
