import * as v from 'valibot';
import { fromDataAddress, isPicture } from '../pictures';
import type { Photo, TableName } from '../rows';
import { type Rows, readRow, shapes } from '../shapes';
import { type AsideText, BACKUP_FORMAT, BACKUP_VERSION, type BackupTables, sumOf } from './format';

/** A backup larger or deeper than these was not written by this app. */
export const LARGEST_BACKUP = 64 * 1024 * 1024;
const DEEPEST = 32;

export type BackupCode =
  | 'backup-too-large'
  | 'backup-too-deep'
  | 'backup-not-json'
  | 'backup-foreign'
  | 'backup-newer'
  | 'backup-empty';

/** What a backup holds, checked and ready to be written. */
export type ReadContents = { readonly [T in TableName]: readonly Rows[T][] } & { readonly aside: readonly AsideText[] };

/**
 * A backup that can be restored. `unreadable` records are not ours or damaged, and left out; `changed`: the file is
 * not, letter for letter, as the app wrote it.
 */
export type ReadBackup = {
  readonly made: string;
  readonly contents: ReadContents;
  readonly unreadable: number;
  readonly changed: boolean;
};
export type BackupResult =
  | { readonly ok: true; readonly backup: ReadBackup }
  | { readonly ok: false; readonly code: BackupCode };

/** Reads a backup's file, or its text. Touches nothing stored and never throws, whatever it is given. */
export async function readBackup(file: Blob | string): Promise<BackupResult> {
  try {
    if (sizeOf(file) > LARGEST_BACKUP) return refuse('backup-too-large');
    const text = typeof file === 'string' ? file : await file.text();
    if (nestingOf(text) > DEEPEST) return refuse('backup-too-deep');
    return await checkBackup(JSON.parse(text.replace(/^\ufeff/u, '')));
  } catch {
    return refuse('backup-not-json');
  }
}

const list = v.fallback(v.array(v.unknown()), []);
const envelope = v.object({
  made: v.fallback(v.pipe(v.string(), v.isoTimestamp()), ''),
  sum: v.fallback(v.string(), ''),
  toys: list,
  readings: list,
  garments: list,
  places: list,
  settings: list,
  photos: list,
  aside: list,
});
const photoShape = v.object({ toyId: v.string(), data: v.string(), changedAt: v.number() });
const asideShape = v.object({
  table: v.picklist(Object.keys(shapes) as TableName[]),
  at: v.number(),
  row: v.pipe(v.string(), v.maxLength(4_000_000)),
});

async function checkBackup(value: unknown): Promise<BackupResult> {
  if (!isRecord(value) || value.format !== BACKUP_FORMAT) return refuse('backup-foreign');
  if (value.version !== BACKUP_VERSION)
    return refuse(Number(value.version) > BACKUP_VERSION ? 'backup-newer' : 'backup-foreign');
  const { made, sum, ...given } = v.parse(envelope, value);
  let unreadable = 0;
  const only = <T>(rows: readonly unknown[], readOne: (row: unknown) => T | null): T[] => {
    const good = rows.map(readOne).filter((row) => row !== null);
    unreadable += rows.length - good.length;
    return good;
  };
  const contents: ReadContents = {
    toys: only(given.toys, (row) => readRow('toys', row)),
    readings: only(given.readings, (row) => readRow('readings', row)),
    garments: only(given.garments, (row) => readRow('garments', row)),
    places: only(given.places, (row) => readRow('places', row)),
    settings: only(given.settings, (row) => readRow('settings', row)),
    photos: only(given.photos, readPhoto),
    aside: only(given.aside, readAside),
  };
  if (Object.values(contents).every((rows) => rows.length === 0)) return refuse('backup-empty');
  const changed = sum !== ((await sumOf(made, given as unknown as BackupTables)) ?? sum);
  return { ok: true, backup: { made, contents, unreadable, changed } };
}

function readPhoto(value: unknown): Photo | null {
  const parsed = v.safeParse(photoShape, value);
  if (!parsed.success) return null;
  const { toyId, data, changedAt } = parsed.output;
  const row = readRow('photos', { toyId, ...fromDataAddress(data), changedAt });
  return row && isPicture(row) ? row : null;
}

function readAside(value: unknown): AsideText | null {
  const parsed = v.safeParse(asideShape, value);
  return parsed.success ? parsed.output : null;
}

/** How deep lists and objects lie in each other, strings skipped; before JSON.parse, which some browsers do recursively. */
function nestingOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  for (let at = 0; at < text.length && deepest <= DEEPEST; at++) {
    const letter = text[at];
    if (letter === '"') at = endOfString(text, at);
    else if (letter === '[' || letter === '{') deepest = Math.max(deepest, ++depth);
    else if (letter === ']' || letter === '}') depth--;
  }
  return deepest;
}

function endOfString(text: string, start: number): number {
  for (let at = text.indexOf('"', start + 1); at > 0; at = text.indexOf('"', at + 1)) {
    let slashes = 0;
    while (text[at - 1 - slashes] === '\\') slashes++;
    if (slashes % 2 === 0) return at;
  }
  return text.length;
}

const sizeOf = (file: Blob | string) => (typeof file === 'string' ? file.length : file.size);
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const refuse = (code: BackupCode): BackupResult => ({ ok: false, code });
