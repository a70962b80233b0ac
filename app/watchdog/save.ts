import { BACKUP_FORMAT, BACKUP_VERSION, photoText, sumOf, tables } from '../storage/backup/format';
import { plain, plainText } from '../storage/plain';
import type { Outcome } from './outcome';
import { everyRow } from './store';

/** The browser needs the address a little longer than the click, ms. */
const KEPT_FOR_MS = 60_000;
/** Beside the store lie notes in localStorage whose keys begin so: what was typed last may be among them. */
const NOTES = 'hemling';

/** Everything kept here as a backup that Settings can bring back; rows that are no longer understood go along word for word. */
export async function saveEverything(): Promise<Outcome> {
  const rows = await everyRow();
  if (!rows) return 'nothing';
  const made = new Date().toISOString();
  const text = await backupText(rows, notes(), made);
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `hemling-${made.slice(0, 10)}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEPT_FOR_MS);
  return 'saved';
}

/**
 * The text of a backup out of the rows of each table as they lie in the store. Never throws for what a row holds.
 * @param made ISO 8601, universal time
 */
export async function backupText(rows: Rows, beside: Readonly<Record<string, unknown>>, made: string): Promise<string> {
  const aside = (rows.aside ?? []).map(asideText);
  const photos = (rows.photos ?? []).flatMap((row) => {
    if (isPhoto(row)) return [photoText(row)];
    aside.push(asideText({ table: 'photos', at: Date.parse(made), row }));
    return [];
  });
  const kept = Object.fromEntries(tables.map((table) => [table, (rows[table] ?? []).map((row) => plain(row))]));
  const all = { ...kept, settings: (kept.settings ?? []).filter(isOfMaker), photos, aside };
  const sum = await sumOf(made, all as unknown as Parameters<typeof sumOf>[1]).catch(() => undefined);
  const typed = (rows.typed ?? []).map((row) => plain(row));
  const more = { ...(sum && { sum }), ...all, beside: { ...beside, typed } };
  return JSON.stringify({ format: BACKUP_FORMAT, version: BACKUP_VERSION, made, ...more });
}

type Rows = Readonly<Record<string, readonly unknown[]>>;

/** A record set aside, in the form a backup has it: the record itself as text. */
function asideText(found: unknown) {
  const { table, at, row } = (found ?? {}) as { table?: unknown; at?: unknown; row?: unknown };
  return { table, at, row: typeof row === 'string' ? row : plainText(row) };
}

const isPhoto = (row: unknown): row is Parameters<typeof photoText>[0] =>
  typeof row === 'object' && row !== null && 'bytes' in row && row.bytes instanceof ArrayBuffer;

/** Settings of the device stay with the device, as in every backup. */
const isOfMaker = (row: unknown) =>
  !(typeof row === 'object' && row !== null && 'key' in row && String(row.key).startsWith('device-'));

function notes(): Record<string, string> {
  try {
    return Object.fromEntries(Object.entries(localStorage).filter(([key]) => key.startsWith(NOTES)));
  } catch {
    return {};
  }
}
