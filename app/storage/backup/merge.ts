import type { Contents, TableName } from '../rows';
import type { Rows } from '../shapes';
import type { ReadContents } from './read';

export type Way = 'merge' | 'replace';

/** What a restore would do, counted by table: rows that come, rows that are replaced by newer ones, rows that go. */
export type Change = { readonly added: number; readonly changed: number; readonly removed: number };
export type Changes = { readonly [T in TableName]: Change };

/** When a row was last touched; of two rows with the same key the later wins. */
const touched: { readonly [T in TableName]: (row: Rows[T]) => number } = {
  toys: (row) => row.changedAt,
  readings: (row) => row.removedAt ?? row.takenAt,
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
 * The rows of the backup that a merge writes: those not here, or newer than those here. Nothing is deleted. A setting
 * made here stays as it is.
 */
export function newerRows<T extends TableName>(
  table: T,
  here: readonly Rows[T][],
  there: readonly Rows[T][],
): Rows[T][] {
  const mine = new Map(here.map((row) => [keyOf[table](row), row]));
  return there.filter((row) => {
    const own = mine.get(keyOf[table](row));
    return !own || (table !== 'settings' && touched[table](own) < touched[table](row));
  });
}

/** What restoring `there` over `here` would change. */
export function changesOf(here: Contents, there: ReadContents, way: Way): Changes {
  const change = <T extends TableName>(table: T): Change => {
    const [mine, theirs] = [here[table] as readonly Rows[T][], there[table] as readonly Rows[T][]];
    const own = new Set(mine.map(keyOf[table]));
    const coming = new Set(theirs.map(keyOf[table]));
    const written = newerRows(table, mine, theirs);
    const added = [...coming].filter((key) => !own.has(key)).length;
    if (way === 'merge') return { added, changed: written.length - added, removed: 0 };
    const moments = new Map(mine.map((row) => [keyOf[table](row), touched[table](row)]));
    const changed = theirs.filter(
      (row) => (moments.get(keyOf[table](row)) ?? touched[table](row)) !== touched[table](row),
    );
    return { added, changed: changed.length, removed: [...own].filter((key) => !coming.has(key)).length };
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
