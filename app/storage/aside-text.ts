import { plainText } from './plain';
import type { Aside, TableName } from './rows';

/** A record set aside, as text; bytes have no JSON of their own and become lists of numbers. */
export const asText = (row: Aside['row']): string => (typeof row === 'string' ? row : plainText(row));

/** The row a record set aside was, or might become: word for word, or out of its text. */
export function asRow(table: TableName, row: Aside['row']): unknown {
  const value = typeof row === 'string' ? parsed(row) : row;
  if (table !== 'photos' || typeof value !== 'object' || value === null || !('bytes' in value)) return value;
  return Array.isArray(value.bytes) ? { ...value, bytes: Uint8Array.from(value.bytes).buffer } : value;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
