import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { usualTraits } from '../../app/body';
import * as store from '../../app/storage';
import { disconnect } from '../../app/storage/connection';
import { DATABASE, versions } from '../../app/storage/database';
import { shapes } from '../../app/storage/shapes';

type Snapshot = Record<string, Record<string, string[]> & { stores: Record<string, string> }>;
type Rows = Record<string, Record<string, unknown>[]>;

const load = <T>(name: string): T => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));
const snapshot = load<Snapshot>('storage-schema.json');

afterEach(() => store.forgetEverything());

/** A change of the store is a new version here and in the snapshot; what is in the snapshot is never edited. */
describe('the schema only grows', () => {
  test('every version there ever was is still there, as it was', () => {
    expect(versions).toEqual(Object.entries(snapshot).map(([id, { stores }]) => ({ version: Number(id), stores })));
  });

  test('every key a row ever had is still read', () => {
    for (const { stores: _, ...tables } of Object.values(snapshot))
      for (const [table, keys] of Object.entries(tables))
        expect(Object.keys(shapes[table as keyof typeof shapes].entries)).toEqual(expect.arrayContaining(keys));
  });

  test('every key of a row is in the newest snapshot', () => {
    const { stores: _, ...newest } = Object.values(snapshot).at(-1) ?? { stores: {} };
    expect(
      Object.fromEntries(Object.entries(shapes).map(([table, shape]) => [table, Object.keys(shape.entries)])),
    ).toEqual(newest);
  });
});

describe.each(versions.map(({ version }) => version))('a store of version %i', (version) => {
  const rows = (): Rows => {
    const { photos, ...others } = load<Rows>(`store-${version}.json`);
    const withBytes = photos?.map((photo) => ({ ...photo, bytes: Uint8Array.from(photo.bytes as number[]).buffer }));
    return { ...others, photos: withBytes ?? [] };
  };

  test('is opened, and everything in it is there', async () => {
    const written = rows();
    // Traits that came later are as most toys have them.
    const toys = (written.toys ?? []).map((toy) => ({ ...toy, traits: { ...usualTraits, ...(toy.traits as object) } }));
    await writeRaw(version, written);
    expect(await store.openStore()).toEqual({ ok: true, found: 'known' });
    expect(await store.listToys()).toEqual(toys.toReversed());
    expect(await store.readingsOf('a1b2c3d4e5f6a1b2c3d4e5f6')).toMatchObject({
      'neck-girth': [{ mm: 304.8 }, { mm: 301.625 }],
      'paw-girth': [{ mm: 150 }],
    });
    expect(await store.whereWasI()).toMatchObject({ step: 'marks' });
    expect(await store.whereWasI('a1b2c3d4e5f6a1b2c3d4e5f6')).toEqual(written.places?.[0]);
    expect(await store.settings()).toEqual({ unit: 'in', 'device-screen': 1.02 });
    const { exportAll } = await store.loadBackup();
    const { toys: told, readings, garments, aside } = await exportAll();
    expect({ toys: told, readings, garments }).toEqual({
      toys: [written.toys?.[1], written.toys?.[0]],
      readings: written.readings,
      garments: written.garments,
    });
    expect(aside).toEqual([]);
  });

  test('with records that cannot be read still opens, sets them aside and exports them', async () => {
    const written = rows();
    const broken = { id: 'broken', toyId: 'a1b2c3d4e5f6a1b2c3d4e5f6', mm: 'three hundred', bytes: new ArrayBuffer(2) };
    await writeRaw(version, { ...written, readings: [...(written.readings ?? []), broken] });
    expect((await store.historyOf('a1b2c3d4e5f6a1b2c3d4e5f6')).map((reading) => reading.id)).toEqual([
      'r1',
      'r2',
      'r4',
    ]);
    await vi.waitFor(async () => expect(await store.health()).toMatchObject({ aside: 1 }));
    const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();
    const backup = await exportAll();
    expect(backup.readings).toHaveLength(4);
    expect(JSON.parse(backup.aside[0]?.row ?? '')).toEqual({ ...broken, bytes: [0, 0] });
    const result = await readBackup(backupFile(backup));
    if (!result.ok) throw new Error(result.code);
    await importAll(result.backup, 'merge');
    await importAll(result.backup, 'replace');
    expect((await exportAll()).aside.map((each) => each.row)).toEqual([backup.aside[0]?.row]);
  });
});

describe('a store that cannot be opened says why', () => {
  test('written by a newer version: left untouched', async () => {
    await writeRaw(99, {});
    expect(await store.openStore()).toEqual({ ok: false, code: 'store-newer' });
    expect((await indexedDB.databases()).find(({ name }) => name === DATABASE)).toHaveProperty('version', 990);
  });

  test.each([
    ['SecurityError', 'store-missing'],
    ['UnknownError', 'store-broken'],
    ['QuotaExceededError', 'store-full'],
  ])('%s is %s', async (name, code) => {
    disconnect();
    const open = vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('no', name);
    });
    expect(await store.openStore()).toEqual({ ok: false, code });
    open.mockRestore();
    expect(await store.openStore()).toMatchObject({ ok: true });
  });

  test('held by an older tab that does not make way: blocked', async () => {
    disconnect();
    const older = await openRaw(5, () => undefined);
    expect(await store.openStore()).toEqual({ ok: false, code: 'store-blocked' });
    older.close();
    expect(await store.openStore()).toMatchObject({ ok: true });
  });
});

/** A database as a build of that time left it, written without any code of ours. */
async function writeRaw(version: number, rows: Rows): Promise<void> {
  disconnect();
  const { stores } = versions.find((each) => each.version === version) ?? { stores: { toys: 'id' } };
  const database = await openRaw(version * 10, (upgraded) => {
    for (const [name, keys] of Object.entries(stores)) {
      const [key = '', ...indexes] = keys.split(', ');
      const table = upgraded.createObjectStore(name, {
        keyPath: key.replace('++', ''),
        autoIncrement: key.startsWith('++'),
      });
      for (const index of indexes) table.createIndex(index, index);
    }
  });
  const names = Object.keys(rows).filter((name) => rows[name]?.length);
  if (names.length > 0) {
    const writing = database.transaction(names, 'readwrite');
    for (const name of names) for (const row of rows[name] ?? []) writing.objectStore(name).put(row);
    await new Promise((done) => writing.addEventListener('complete', done));
  }
  database.close();
}

const openRaw = (version: number, upgrade: (database: IDBDatabase) => void) =>
  new Promise<IDBDatabase>((done, failed) => {
    const request = indexedDB.open(DATABASE, version);
    request.onupgradeneeded = () => upgrade(request.result);
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
