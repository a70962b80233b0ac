import { plainText } from '../plain';
import type { Aside, Contents, TableName } from '../rows';
import { orderOf, type Rows } from '../shapes';
import type { AsideText } from './format';
import type { ReadContents } from './read';

export type Way = 'merge' | 'replace';

/** What a restore would do, counted by table: rows that come, rows that are replaced by newer ones, rows that go. */
export type Change = { readonly added: number; readonly changed: number; readonly removed: number };
export type Changes = { readonly [T in TableName]: Change };

/** When a row was last touched, by the order of writing; no number for a damaged one. */
const touched: { readonly [T in TableName]: (row: Rows[T]) => number } = {
  toys: (row) => row.changedAt,
  readings: (row) => orderOf(row).changedAt,
  garments: (row) => row.changedAt,
  places: (row) => row.at,
  settings: (row) => row.changedAt,
  photos: (row) => row.changedAt,
};

export const keyOf: { readonly [T in TableName]: (row: Rows[T]) => string } = {
  toys: (row) => row.id,
  readings: (row) => row.id,
  garments: (row) => row.id,
  places: (row) => row.toyId,
  settings: (row) => row.key,
  photos: (row) => row.toyId,
};

export const tableNames = Object.keys(keyOf) as TableName[];

/**
 * The rows of the backup that a merge writes: those not here, or later than those here. Of two rows of one key the
 * later wins, and of two that are equally late the one whose text sorts last: so devices that merge each other's files
 * hold the same, in whatever order they do it. Nothing is deleted.
 */
export function newerRows<T extends TableName>(
  table: T,
  here: readonly Rows[T][],
  there: readonly Rows[T][],
): Rows[T][] {
  const mine = byKey(table, here);
  return [...byKey(table, there).values()].filter((row) => {
    const own = mine.get(keyOf[table](row));
    return own === undefined || isLater(table, row, own);
  });
}

/** Rows here that cannot be read and would be overwritten: to be set aside first. */
export function damagedUnder<T extends TableName>(table: T, here: readonly Rows[T][], coming: readonly Rows[T][]) {
  const keys = new Set(coming.map(keyOf[table]));
  return here
    .filter((row) => keys.has(keyOf[table](row)) && !Number.isFinite(touched[table](row)))
    .map((row): Aside => ({ table, at: Date.now(), row }));
}

/** Of each key the latest row; a file may name one twice. */
function byKey<T extends TableName>(table: T, rows: readonly Rows[T][]): Map<string, Rows[T]> {
  const latest = new Map<string, Rows[T]>();
  for (const row of rows) {
    const key = keyOf[table](row);
    const other = latest.get(key);
    if (other === undefined || isLater(table, row, other)) latest.set(key, row);
  }
  return latest;
}

function isLater<T extends TableName>(table: T, row: Rows[T], other: Rows[T]): boolean {
  const [one, two] = [touched[table](row), touched[table](other)];
  return one === two ? plainText(row) > plainText(other) : !(two >= one);
}

/** What is set aside there and not here; the same text is the same record. */
export const newAside = (here: readonly AsideText[], there: readonly AsideText[]): AsideText[] => {
  const own = new Set(here.map(({ table, row }) => `${table} ${row}`));
  return [...new Map(there.map((each) => [`${each.table} ${each.row}`, each])).entries()].flatMap(([text, each]) =>
    own.has(text) ? [] : [each],
  );
};

/** What restoring `there` over `here` would change. */
export function changesOf(here: Contents, there: ReadContents, way: Way): Changes {
  const change = <T extends TableName>(table: T): Change => {
    const [mine, theirs] = [here[table] as readonly Rows[T][], there[table] as readonly Rows[T][]];
    const own = byKey(table, mine);
    const coming = byKey(table, theirs);
    const added = [...coming.keys()].filter((key) => !own.has(key)).length;
    if (way === 'merge') return { added, changed: newerRows(table, mine, theirs).length - added, removed: 0 };
    const changed = [...coming].filter(([key, row]) => {
      const before = own.get(key);
      return before !== undefined && touched[table](before) !== touched[table](row);
    });
    return { added, changed: changed.length, removed: [...own.keys()].filter((key) => !coming.has(key)).length };
  };
  return {
    toys: change('toys'),
    readings: change('readings'),
    garments: change('garments'),
    places: change('places'),
    settings: change('settings'),
    photos: change('photos'),
  };
}
