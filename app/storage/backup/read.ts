import * as v from 'valibot';
import { LAST_DAY } from '../clock';
import { fromDataAddress, isPicture } from '../pictures';
import type { TableName } from '../rows';
import { parseRow, type Rows, readRow, shapes } from '../shapes';
import { isNewer } from '../sound';
import { type AsideText, BACKUP_FORMAT, BACKUP_VERSION, type BackupTables, sumOf } from './format';

/** A backup larger or deeper than these was not written by this app. */
export const LARGEST_BACKUP = 64 * 1024 * 1024;
const DEEPEST = 32;
/** A photo of the largest size, written as numbers, and room to spare. */
const LONGEST_ASIDE = 16_000_000;
/** The keys of rows that hold moments. */
const MOMENTS = ['createdAt', 'changedAt', 'set', 'turn', 'takenAt', 'removedAt', 'at'];

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
 * A backup that can be restored. `unreadable` records are not ours or damaged, and left out; `newer` ones are for a newer
 * build, and kept as they are; `changed`: the file is not, letter for letter, as the app wrote it.
 */
export type ReadBackup = {
  readonly made: string;
  readonly contents: ReadContents;
  readonly unreadable: number;
  readonly newer: number;
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
  row: v.pipe(v.string(), v.maxLength(LONGEST_ASIDE)),
});

async function checkBackup(value: unknown): Promise<BackupResult> {
  if (!isRecord(value) || value.format !== BACKUP_FORMAT) return refuse('backup-foreign');
  if (value.version !== BACKUP_VERSION)
    return refuse(Number(value.version) > BACKUP_VERSION ? 'backup-newer' : 'backup-foreign');
  const { made, sum, ...given } = v.parse(envelope, value);
  let unreadable = 0;
  let newer = 0;
  const only = <T>(rows: readonly unknown[], readOne: (row: unknown) => T | null): T[] => {
    const good = rows.map(readOne).filter((row) => row !== null);
    unreadable += rows.length - good.length;
    return good;
  };
  const row =
    <T extends TableName>(table: T) =>
    (value: unknown): Rows[T] | null => {
      const parsed = parseRow(table, value);
      if (parsed) return notLaterThanDays({ ...(value as object), ...parsed });
      if (!isNewer(table, value)) return null;
      newer += 1;
      return notLaterThanDays(value as Rows[T]);
    };
  const contents: ReadContents = {
    toys: only(given.toys, row('toys')),
    readings: only(given.readings, row('readings')),
    garments: only(given.garments, row('garments')),
    places: only(given.places, row('places')),
    settings: only(given.settings, row('settings')),
    photos: only(given.photos, (value) => row('photos')(photoOf(value))),
    aside: only(given.aside, readAside),
  };
  if (Object.values(contents).every((rows) => rows.length === 0)) return refuse('backup-empty');
  const changed = sum !== ((await sumOf(made, given as unknown as BackupTables)) ?? sum);
  return { ok: true, backup: { made, contents, unreadable, newer, changed } };
}

/** The row of a photo; null when its bytes are not what they say. A type this build does not know is not looked into. */
function photoOf(value: unknown): unknown {
  const parsed = v.safeParse(photoShape, value);
  if (!parsed.success) return null;
  const { toyId, data, changedAt } = parsed.output;
  const row = { toyId, ...fromDataAddress(data), changedAt };
  const known = readRow('photos', row);
  return known && !isPicture(known) ? null : row;
}

/** A row is never later than the last day, so that no file can claim the end of time for itself. */
function notLaterThanDays<R extends object>(row: R): R {
  const late = Object.entries(row).filter(([key, value]) => MOMENTS.includes(key) && Number(value) > LAST_DAY);
  return late.length === 0 ? row : { ...row, ...Object.fromEntries(late.map(([key]) => [key, LAST_DAY])) };
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
