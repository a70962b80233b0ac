import { read, write } from '../connection';
import type { Store } from '../database';
import { StoreError } from '../errors';
import type { Aside, Contents, Copy, Setting, TableName } from '../rows';
import { isOfDevice } from '../settings';
import { asideText, everything, everythingNow } from './export';
import type { AsideText } from './format';
import { type Changes, changesOf, damagedUnder, newAside, newerRows, tableNames, type Way } from './merge';
import type { ReadBackup, ReadContents } from './read';

const COPY = 'before-replace';
const touchedTables = [...tableNames, 'aside', 'copies'] as const;

/** What restoring would change, both ways, counted by table. Writes nothing. */
export async function previewImport(backup: ReadBackup): Promise<{ readonly [W in Way]: Changes }> {
  const { contents } = await everythingNow();
  return {
    merge: changesOf(contents, backup.contents, 'merge'),
    replace: changesOf(contents, backup.contents, 'replace'),
  };
}

/**
 * Restores a backup in one transaction: all of it or, whatever happens, none. `merge` adds and renews, deletes
 * nothing; `replace` first keeps a copy of everything here (see `undoReplace`), within the same transaction.
 */
export function importAll(backup: ReadBackup, way: Way): Promise<void> {
  const work = way === 'merge' ? merge : replace;
  return write(touchedTables, undefined, (store) => work(store, backup.contents), false);
}

/** When the copy was made that the last replace kept; null when there is none. */
export async function copyKept(): Promise<number | null> {
  return (await read((store) => store.copies.get(COPY)))?.at ?? null;
}

/** Puts everything back as it was before the last replace, whose content in turn is the copy now. Throws `store-gone`. */
export function undoReplace(): Promise<void> {
  return write(
    touchedTables,
    undefined,
    async (store) => {
      const copy = await store.copies.get(COPY);
      if (!copy) throw new StoreError('store-gone');
      await keepCopy(store);
      await clear(store);
      await put(store, copy.contents, copy.aside);
    },
    false,
  );
}

/** Lets the copy go, for its room or for privacy. */
export const forgetCopy = (): Promise<void> => write(['copies'], undefined, (store) => store.copies.delete(COPY));

async function merge(store: Store, there: ReadContents): Promise<void> {
  const { contents: here, aside } = await everything(store);
  const coming = {
    toys: newerRows('toys', here.toys, there.toys),
    readings: newerRows('readings', here.readings, there.readings),
    garments: newerRows('garments', here.garments, there.garments),
    places: newerRows('places', here.places, there.places),
    settings: newerRows('settings', here.settings, ofMaker(there.settings)),
    photos: newerRows('photos', here.photos, there.photos),
  };
  const damaged = [
    ...damagedUnder('toys', here.toys, coming.toys),
    ...damagedUnder('readings', here.readings, coming.readings),
    ...damagedUnder('garments', here.garments, coming.garments),
    ...damagedUnder('places', here.places, coming.places),
    ...damagedUnder('settings', here.settings, coming.settings),
    ...damagedUnder('photos', here.photos, coming.photos),
  ];
  await put(store, coming, [...damaged, ...newAside(aside.map(asideText), there.aside)]);
}

async function replace(store: Store, there: ReadContents): Promise<void> {
  await keepCopy(store);
  await clear(store);
  await put(store, there, there.aside);
}

async function keepCopy(store: Store): Promise<void> {
  const copy: Copy = { id: COPY, at: Date.now(), ...(await everything(store)) };
  await store.copies.put(copy);
}

async function clear(store: Store): Promise<void> {
  for (const name of [...tableNames, 'aside'] satisfies (TableName | 'aside')[])
    if (name !== 'settings') await store.table(name).clear();
  await store.settings.filter((setting) => !isOfDevice(setting.key)).delete();
}

async function put(store: Store, rows: Contents, aside: readonly (Aside | AsideText)[]): Promise<void> {
  await store.toys.bulkPut(rows.toys);
  await store.readings.bulkPut(rows.readings);
  await store.garments.bulkPut(rows.garments);
  await store.places.bulkPut(rows.places);
  await store.settings.bulkPut(ofMaker(rows.settings));
  await store.photos.bulkPut(rows.photos);
  await store.aside.bulkPut(aside.map(({ table, at, row }) => ({ table, at, row })));
}

const ofMaker = (settings: readonly Setting[]) => settings.filter((setting) => !isOfDevice(setting.key));
