import { disconnect, write } from './connection';
import type { Aside, TableName } from './rows';
import { type Rows, readRow } from './shapes';
import { isNewer } from './sound';

/**
 * The rows of `found` that can be read. What a newer build wrote stays where it is, unread. What is damaged is set
 * aside (copied word for word to a table of its own and taken out), a moment later, outside whatever query found it; it
 * goes into every backup, and is tried again at every start (see care.ts).
 */
export const readable = <T extends TableName>(table: T, found: readonly unknown[]): Rows[T][] =>
  sorted(table, found).rows;

/** The same, with what a newer build wrote told apart. */
export function sorted<T extends TableName>(
  table: T,
  found: readonly unknown[],
): { rows: Rows[T][]; newer: unknown[] } {
  const rows: Rows[T][] = [];
  const newer: unknown[] = [];
  for (const each of found) {
    const row = readRow(table, each);
    if (row) rows.push(row);
    else if (isNewer(table, each)) newer.push(each);
    else later(table, each);
  }
  return { rows, newer };
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
