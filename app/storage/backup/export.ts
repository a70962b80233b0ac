import { read } from '../connection';
import type { Store } from '../database';
import type { Aside, Contents } from '../rows';
import { isOfDevice } from '../settings';
import { readRow } from '../shapes';
import { type AsideText, BACKUP_FORMAT, BACKUP_VERSION, type Backup, photoText, sumOf, tables } from './format';

/**
 * Everything kept, photos and unreadable records included, as it was at one moment; settings of the device stay with
 * the device. Throws StoreError.
 */
export async function exportAll(): Promise<Backup> {
  const { contents, aside } = await everythingNow();
  const unreadable: AsideText[] = aside.map(asideText);
  const photos = contents.photos.flatMap((photo) => {
    if (readRow('photos', photo)) return [photoText(photo)];
    unreadable.push(asideText({ table: 'photos', at: Date.now(), row: photo }));
    return [];
  });
  const settings = contents.settings.filter((setting) => !isOfDevice(setting.key));
  const backup = { ...contents, settings, photos, aside: unreadable };
  const made = new Date().toISOString();
  const sum = await sumOf(made, backup);
  return {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    made,
    ...(sum && { sum }),
    ...backup,
  };
}

/** The backup as a file, one record a line. */
export function backupFile(backup: Backup): Blob {
  const { format, version, made, sum } = backup;
  const head = JSON.stringify({ format, version, made, sum }).slice(0, -1);
  const parts = tables.flatMap((table) => [`,\n"${table}":[`, ...linesOf(backup[table]), '\n]']);
  return new Blob([head, ...parts, '}\n'], { type: 'application/json' });
}

/** Every row of every table as they are at one moment. */
export const everythingNow = (): ReturnType<typeof everything> =>
  read((store) => store.transaction('r', [...everyTable(store), store.aside], () => everything(store)));

/** Every row of every table; to be called within a transaction over all of them. */
export async function everything(store: Store): Promise<{ contents: Contents; aside: Aside[] }> {
  const contents = {
    toys: await store.toys.toArray(),
    readings: await store.readings.toArray(),
    garments: await store.garments.toArray(),
    places: await store.places.toArray(),
    settings: await store.settings.toArray(),
    photos: await store.photos.toArray(),
  };
  return { contents, aside: await store.aside.toArray() };
}

const everyTable = (store: Store) => [
  store.toys,
  store.readings,
  store.garments,
  store.places,
  store.settings,
  store.photos,
];

const linesOf = (rows: readonly unknown[]) => rows.map((row, index) => `${index ? ',' : ''}\n${JSON.stringify(row)}`);

/** Bytes have no JSON of their own; they become lists of numbers. */
export const asideText = ({ table, at, row }: Aside): AsideText => ({
  table,
  at,
  row: typeof row === 'string' ? row : (JSON.stringify(row, bytesToNumbers) ?? 'null'),
});

const bytesToNumbers = (_: string, value: unknown) =>
  value instanceof ArrayBuffer ? Array.from(new Uint8Array(value)) : typeof value === 'bigint' ? String(value) : value;
