import 'fake-indexeddb/auto';
import { afterEach, expect, test, vi } from 'vitest';
import * as store from '../../app/storage';
import { fillStore } from './storage-samples';

vi.stubGlobal('navigator', { languages: ['en'] });
const { backupText } = await import('../../app/watchdog/save');
const { everyRow } = await import('../../app/watchdog/store');
const { exportAll, readBackup } = await store.loadBackup();

afterEach(() => store.forgetEverything());

const MADE = '2026-11-20T12:00:00.000Z';

/** Without order of keys, and without the moment it was written down. */
const tablesOf = ({ made: _, sum: __, ...rest }: object & { made: string; sum?: string }) =>
  JSON.parse(JSON.stringify(rest));

test('what the watchdog saves is the backup that the app would have saved', async () => {
  await fillStore(4);
  const rows = await everyRow();
  if (!rows) throw new Error('no store');
  const text = await backupText(rows, { 'hemling-note': 'x' }, MADE);
  const { beside, ...saved } = JSON.parse(text);
  expect(tablesOf(saved)).toEqual(tablesOf(await exportAll()));
  expect(beside).toMatchObject({ 'hemling-note': 'x' });
  expect(await readBackup(text)).toMatchObject({ ok: true, backup: { unreadable: 0, changed: false, made: MADE } });
});

test('rows that nothing can read go along, and cost no other', async () => {
  await fillStore(2);
  const rows = await everyRow();
  if (!rows) throw new Error('no store');
  const ring: Record<string, unknown> = {};
  ring.ring = ring;
  const odd: unknown[] = [null, 17n, 'text', ring, [ring], { bytes: new ArrayBuffer(3) }, undefined, new Date(0)];
  const spoiled = Object.fromEntries(Object.entries(rows).map(([table, found]) => [table, [...odd, ...found]]));
  const read = await readBackup(await backupText(spoiled, {}, MADE));
  if (!read.ok) throw new Error(read.code);
  expect(read.backup.contents.toys.length).toBe(2);
  expect(read.backup.contents.readings.length).toBe(4);
  expect(read.backup.contents.photos.length).toBe(2);
});

test('where no store is, none is made', async () => {
  indexedDB.deleteDatabase('hemling');
  await store.forgetEverything();
  for (const { name } of await indexedDB.databases()) indexedDB.deleteDatabase(name ?? '');
  expect(await everyRow()).toBeNull();
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain('hemling');
});
