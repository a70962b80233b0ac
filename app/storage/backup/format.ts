import type { Aside, Contents, Moment, Photo } from '../rows';

export const BACKUP_FORMAT = 'hemling-backup';
export const BACKUP_VERSION = 1;

/** A photo as text: a data address. */
export type PhotoText = { readonly toyId: string; readonly data: string; readonly changedAt: Moment };
/** A record that could not be read, as the JSON text it would have: never looked into, only carried along. */
export type AsideText = { readonly table: Aside['table']; readonly at: Moment; readonly row: string };

/** Everything kept, as plain data; its JSON Schema is assets/schema/backup-1.json. */
export type Backup = {
  readonly format: typeof BACKUP_FORMAT;
  readonly version: typeof BACKUP_VERSION;
  /** ISO 8601, universal time. */
  readonly made: string;
  /** SHA-256, in hexadecimal, of the JSON text of the list of `made` and the `tables`; none in an insecure context. */
  readonly sum?: string;
} & Omit<Contents, 'photos'> & { readonly photos: readonly PhotoText[]; readonly aside: readonly AsideText[] };

/** The tables of a backup, in the order they are written and summed. */
export const tables = ['toys', 'readings', 'garments', 'places', 'settings', 'photos', 'aside'] as const;
export type BackupTables = Pick<Backup, (typeof tables)[number]>;

/** Detects what was changed since the backup was written. Undefined where the browser offers no digest. */
export async function sumOf(made: string, backup: BackupTables): Promise<string | undefined> {
  const digest = globalThis.crypto?.subtle;
  if (!digest) return undefined;
  const text = JSON.stringify([made, ...tables.map((table) => backup[table])]);
  const sum = await digest.digest('SHA-256', new TextEncoder().encode(text));
  return hex(new Uint8Array(sum));
}

const hex = (bytes: Uint8Array) => Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

const CHUNK = 0x8000;

export function photoText({ toyId, type, bytes, changedAt }: Photo): PhotoText {
  const all = new Uint8Array(bytes);
  let letters = '';
  for (let start = 0; start < all.length; start += CHUNK)
    letters += String.fromCharCode(...all.subarray(start, start + CHUNK));
  return { toyId, data: `data:${type};base64,${btoa(letters)}`, changedAt };
}
