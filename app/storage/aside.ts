import { disconnect, write } from './connection';
import type { Aside, TableName } from './rows';
import { type Rows, readRow } from './shapes';

/**
 * The rows of `found` that can be read. Those that cannot are set aside (copied word for word to a table of their own
 * and taken out), a moment later, outside whatever query found them; they go into every backup.
 */
export function readable<T extends TableName>(table: T, found: readonly unknown[]): Rows[T][] {
  const rows: Rows[T][] = [];
  for (const each of found) {
    const row = readRow(table, each);
    if (row) rows.push(row);
    else later(table, each);
  }
  return rows;
}

const waiting: Aside[] = [];

function later(table: TableName, row: unknown): void {
  if (waiting.length === 0) setTimeout(setAside);
  waiting.push({ table, at: Date.now(), row });
}

/** Nothing waits for this, and a failure leaves the rows where they are, to be found again. */
async function setAside(): Promise<void> {
  const found = waiting.splice(0);
  await write([...new Set(found.map((each) => each.table)), 'aside'], undefined, async (store) => {
    for (const each of found) {
      const table = store.table<unknown, string>(each.table);
      const key = keyOf(each.row, String(table.schema.primKey.keyPath));
      if (key === undefined || (await table.get(key)) === undefined) continue;
      await store.aside.add(each);
      await table.delete(key);
    }
  }).catch(disconnect);
}

function keyOf(row: unknown, path: string): string | undefined {
  if (typeof row !== 'object' || row === null) return undefined;
  const key: unknown = Reflect.get(row, path);
  return typeof key === 'string' ? key : undefined;
}
