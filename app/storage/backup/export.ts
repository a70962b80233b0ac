import { asText } from '../aside-text';
import { wallClock } from '../clock';
import { read } from '../connection';
import type { Store } from '../database';
import { plain } from '../plain';
import type { Aside, Contents, TableName } from '../rows';
import { isOfDevice } from '../settings';
import type { Rows } from '../shapes';
import { isSound } from '../sound';
import { type AsideText, BACKUP_FORMAT, BACKUP_VERSION, type Backup, photoText, sumOf, tables } from './format';

/**
 * Everything kept, photos, what a newer build wrote and unreadable records included, as it was at one moment; settings
 * of the device stay with the device. Throws StoreError.
 */
export async function exportAll(): Promise<Backup> {
  const { contents, aside } = await everythingNow();
  const unreadable: AsideText[] = aside.map(asideText);
  const whole = <T extends TableName>(table: T, rows: readonly Rows[T][]) =>
    rows.filter((row) => {
      const sound = isSound(table, row);
      if (!sound) unreadable.push(asideText({ table, at: wallClock(), row }));
      return sound;
    });
  const settings = contents.settings.filter((setting) => !isOfDevice(setting.key));
  const backup = {
    toys: whole('toys', contents.toys).map(plainRow),
    readings: whole('readings', contents.readings).map(plainRow),
    garments: whole('garments', contents.garments).map(plainRow),
    places: whole('places', contents.places).map(plainRow),
    settings: whole('settings', settings).map(plainRow),
    photos: whole('photos', contents.photos).map(photoText),
    aside: unreadable,
  };
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

/** A newer build may keep what JSON cannot hold. */
const plainRow = <R>(row: R) => plain(row) as R;

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

export const asideText = ({ table, at, row }: Aside): AsideText => ({
  table,
  at: Number.isFinite(at) ? at : 0,
  row: asText(row),
});
