import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { usualTraits } from '../../app/body';
import * as store from '../../app/storage';
import { connect } from '../../app/storage/connection';

afterEach(async () => {
  vi.restoreAllMocks();
  await store.forgetEverything();
});

const moments = { createdAt: 1.7e12, changedAt: 1.7e12 };
const dragon = { id: 'd', name: 'Ember', kind: 'winged', traits: { wings: [2] }, spells: { fire: 3 }, ...moments };
const length = { toyId: 'd', measureId: 'wing-span', mm: 9000, from: 'scan', set: 1, takenAt: 1 };
const rows = {
  toys: [dragon],
  readings: [{ id: 'r', ...length }],
  garments: [{ id: 'g', toyId: 'd', order: { garment: 'cloak', choices: { lining: ['a', 'b'] } }, ...moments }],
  settings: [{ key: 'tape', value: { from: 1 }, changedAt: 5 }],
  photos: [{ toyId: 'd', type: 'image/jxl', bytes: new ArrayBuffer(8), changedAt: 5 }],
};

/** As a newer build left it: written without any code of ours. */
async function writeRows(): Promise<void> {
  const database = await connect();
  for (const [table, all] of Object.entries(rows)) await database.table(table).bulkPut(all);
}
const rowsKept = async () => {
  const database = await connect();
  const tables = Object.keys(rows).map(async (table) => [table, await database.table(table).toArray()] as const);
  return Object.fromEntries(await Promise.all(tables));
};

async function lookAtEverything(): Promise<void> {
  await store.openStore();
  await store.listToys();
  await store.historyOf('d');
  await store.garmentsOf('d');
  await store.photoOf('d');
  await store.settings();
  await new Promise((done) => setTimeout(done, 30));
}

describe('what a newer build wrote', () => {
  test('stays in place, is told of and goes into every backup and back', async () => {
    await writeRows();
    const plain = await store.saveToy({ name: 'Plain', kind: 'round' });
    await lookAtEverything();
    const both = { ...rows, toys: [plain, dragon].sort((a, b) => (a.id < b.id ? -1 : 1)) };
    expect(await rowsKept()).toMatchObject(both);
    expect(await store.health()).toMatchObject({ aside: 0 });
    let told: unknown;
    const stop = store.watchToys((toys, newer) => {
      told = { toys, newer };
    });
    await expect.poll(() => told).toEqual({ toys: [plain], newer: ['Ember'] });
    stop();
    const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();
    const file = backupFile(await exportAll());
    for (const way of ['merge', 'replace'] as const) {
      await store.forgetEverything();
      const result = await readBackup(file);
      expect(result).toMatchObject({ ok: true, backup: { unreadable: 0, newer: 5, changed: false } });
      if (result.ok) await importAll(result.backup, way);
      await lookAtEverything();
      expect(await rowsKept()).toMatchObject(both);
    }
  });

  test('keeps what this build does not know of, when this build changes the rest', async () => {
    const toy = await store.saveToy({ name: 'Plain', kind: 'round' });
    const database = await connect();
    await database.table('toys').put({ ...toy, spells: { fire: 3 } });
    await store.changeToy(toy.id, { name: 'Plainer', traits: { ...usualTraits, tail: true } });
    expect(await database.table('toys').get(toy.id)).toMatchObject({ name: 'Plainer', spells: { fire: 3 } });
  });
});

test('records set aside are tried again at each start, and go back once they are understood', async () => {
  const { tryAsideAgain } = await store.loadCare();
  const toy = await store.saveToy({ name: 'Plain', kind: 'round' });
  const reading = await store.saveReading(toy.id, 'neck-girth', 300);
  const damaged = { id: 'x', toyId: toy.id, mm: 'wide' };
  const database = await connect();
  const { id: _, ...rest } = reading;
  await database.table('readings').clear();
  // An earlier build understood less, and set aside more; one record came out of a backup, as text.
  await database.table('aside').bulkAdd([
    { table: 'readings', at: 1, row: damaged },
    { table: 'readings', at: 1, row: reading },
    { table: 'toys', at: 1, row: JSON.stringify(dragon) },
    { table: 'photos', at: 1, row: JSON.stringify({ toyId: toy.id, type: 'image/png', bytes: [1, 2], changedAt: 2 }) },
    { table: 'settings', at: 1, row: '{"key":' },
  ]);
  expect(await tryAsideAgain()).toBe(3);
  expect(await store.historyOf(toy.id)).toEqual([{ id: reading.id, ...rest }]);
  expect(await database.table('toys').get('d')).toEqual(dragon);
  expect((await database.table('photos').get(toy.id)).bytes).toEqual(Uint8Array.from([1, 2]).buffer);
  expect((await database.table('aside').toArray()).map(({ row }) => row)).toEqual([damaged, '{"key":']);
  expect(await tryAsideAgain()).toBe(0);
});
