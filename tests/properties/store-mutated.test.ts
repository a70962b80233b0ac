import 'fake-indexeddb/auto';
import { afterAll, expect, test, vi } from 'vitest';
import * as store from '../../app/storage';
import { connect } from '../../app/storage/connection';
import type { Store } from '../../app/storage/database';
import { type Random, seeded } from '../toys/seeded';
import { fillStore, longest } from '../unit/storage-samples';

/** Fewer where every push waits for them. */
const MUTANTS = Number(process.env.MUTANTS ?? 150);
const TABLES = ['toys', 'readings', 'garments', 'places', 'settings', 'photos', 'facts', 'typed', 'aside'] as const;

/** What a bug, a newer build or a stranger with the developer tools might leave in the place of a value. */
const strange: readonly (() => unknown)[] = [
  () => null,
  () => undefined,
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => -1,
  () => 2 ** 53,
  () => 7_258_118_400_000 + 2 ** 40,
  () => 0.5,
  () => '',
  () => '__proto__',
  () => longest,
  () => '\u0000\u202e',
  () => [],
  () => [[[]]],
  () => ({}),
  () => ({ constructor: { prototype: 1 } }),
  () => JSON.parse('{"__proto__":{"bad":1}}'),
  () => new Date(0),
  () => new Map([['a', 1]]),
  () => 10n,
  () => new ArrayBuffer(3),
  () => true,
  () => 'winged',
];

afterAll(async () => {
  await new Promise((done) => setTimeout(done, 50));
  await store.forgetEverything();
});

test(`${MUTANTS} stores with rows written straight into them: the app starts, works, tells what it set aside and loses nothing else`, async () => {
  const random = seeded(20261128);
  await fillStore(3);
  const before = await everyRow(await connect());
  const fates = { understood: 0, newer: 0, aside: 0 };
  for (let each = 0; each < MUTANTS; each++) {
    const database = await connect();
    const spoilt = await spoil(database, random);
    await vi.waitFor(() => lives(spoilt), { timeout: 30_000 });
    const after = await everyRow(await connect());
    for (const table of TABLES)
      for (const [key, row] of before[table] ?? [])
        if (table !== 'facts' && table !== 'typed' && `${table} ${key}` !== spoilt.name)
          expect(after[table]?.get(key), `${spoilt.name} ${table} ${key}`).toEqual(row);
    const row = after[spoilt.table]?.get(spoilt.key);
    const aside = [...(after.aside?.values() ?? [])].length;
    if (row === undefined) expect(aside, spoilt.name).toBeGreaterThan(0);
    fates[row === undefined ? 'aside' : aside > 0 ? 'newer' : 'understood'] += 1;
    await putAllBack(before);
  }
  expect(({} as { bad?: number }).bad).toBeUndefined();
  expect(Math.min(fates.understood, fates.aside)).toBeGreaterThan(MUTANTS / 20);
  console.log(JSON.stringify(fates));
});

type Spoilt = { readonly table: (typeof TABLES)[number]; readonly key: unknown; readonly name: string };

/** Replaces, drops or adds one to three values of one row; its key stays, or the store would not take it. */
async function spoil(database: Store, random: Random): Promise<Spoilt> {
  const table = TABLES[Math.floor(random() * TABLES.length)] ?? 'toys';
  const path = String(database.table(table).schema.primKey.keyPath);
  const rows: Record<string, unknown>[] = await database.table(table).toArray();
  const chosen = rows[Math.floor(random() * rows.length)] ?? { [path]: table === 'aside' ? 1 : 'since-backup' };
  const row: Record<string, unknown> = structuredClone(chosen);
  const places = ['extra', ...Object.keys(row)].filter((name) => name !== path);
  for (let times = 1 + Math.floor(random() * 3); times > 0; times--) {
    const place = places[Math.floor(random() * places.length)] ?? 'extra';
    if (random() < 0.15) delete row[place];
    else row[place] = strange[Math.floor(random() * strange.length)]?.();
  }
  await database.table(table).put(row);
  return { table, key: row[path], name: `${table} ${row[path]}` };
}

/** A maker opens the app, looks at all there is, measures, and saves a backup. */
async function lives({ name }: Spoilt): Promise<void> {
  expect(await store.openStore(), name).toMatchObject({ ok: true });
  const { tryAsideAgain } = await store.loadCare();
  await tryAsideAgain();
  await store.settings();
  await store.whereWasI();
  for (const toy of await store.listToys()) {
    await store.readingsOf(toy.id);
    await store.garmentsOf(toy.id);
    await store.photoOf(toy.id);
    await store.cardOf(toy.id, 'cm');
    const { id } = await store.saveReading(toy.id, 'waist-girth', 55, 'tape', { anew: true });
    expect(
      (await store.readingsOf(toy.id))['waist-girth']?.map((reading) => reading.id),
      name,
    ).toEqual([id]);
  }
  await store.health();
  const { backupFile, exportAll, previewImport, readBackup } = await store.loadBackup();
  const result = await readBackup(backupFile(await exportAll()));
  expect(result, name).toMatchObject({ ok: true, backup: { changed: false } });
  if (result.ok) await previewImport(result.backup);
  await new Promise((done) => setTimeout(done, 5));
}

type Rows = { readonly [T in (typeof TABLES)[number]]?: ReadonlyMap<unknown, unknown> };

async function everyRow(database: Store): Promise<Rows> {
  const tables = TABLES.map(async (table) => {
    const path = String(database.table(table).schema.primKey.keyPath);
    const rows = await database.table(table).toArray();
    return [table, new Map(rows.map((row) => [row[path], row]))] as const;
  });
  return Object.fromEntries(await Promise.all(tables));
}

async function putAllBack(before: Rows): Promise<void> {
  const database = await connect();
  for (const table of TABLES) {
    await database.table(table).clear();
    await database.table(table).bulkPut([...(before[table]?.values() ?? [])]);
  }
}
