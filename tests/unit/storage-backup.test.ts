import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as store from '../../app/storage';
import { type Backup, loadBackup, type ReadBackup } from '../../app/storage';
import { fillStore, JPEG, longest } from './storage-samples';

const { backupFile, copyKept, exportAll, forgetCopy, importAll, previewImport, readBackup, undoReplace } =
  await loadBackup();

beforeEach(() => fillStore(3));
afterEach(() => store.forgetEverything());

const read = async (backup: Backup): Promise<ReadBackup> => {
  const result = await readBackup(backupFile(backup));
  if (!result.ok) throw new Error(result.code);
  return result.backup;
};
/** Everything but when it was written down. */
const content = ({ made: _, sum: __, ...rest }: Backup) => rest;
const none = { added: 0, changed: 0, removed: 0 };

describe('a backup', () => {
  test('restored into an empty store is equal', async () => {
    const backup = await exportAll();
    await store.forgetEverything();
    await importAll(await read(backup), 'merge');
    expect(content(await exportAll())).toEqual(content(backup));
    expect(await store.photoOf(backup.toys[0]?.id ?? '')).toEqual(JPEG);
  });

  test('is as its schema says, and the schema refuses what is not', async () => {
    const valid = new Ajv2020().compile(JSON.parse(readFileSync('assets/schema/backup-1.json', 'utf8')));
    const backup = JSON.parse(await backupFile(await exportAll()).text());
    expect(backup.readings.length).toBeGreaterThan(3);
    valid(backup);
    expect(valid.errors).toBeNull();
    for (const wrong of [
      { version: 2 },
      { sum: 'x' },
      { readings: [{ ...backup.readings[0], mm: 0 }] },
      { toys: [{}] },
    ])
      expect(valid({ ...backup, ...wrong })).toBe(false);
  });

  test('leaves out and never touches what belongs to the device', async () => {
    await store.setSetting('device-screen', 1.1);
    const backup = await exportAll();
    expect(backup.settings.map((setting) => setting.key)).toEqual(['unit']);
    await importAll(await read(backup), 'replace');
    expect(await store.settings()).toEqual({ unit: 'in', 'device-screen': 1.1 });
  });

  test('changed by one digit is known to be changed, and can still be restored', async () => {
    const text = await backupFile(await exportAll()).text();
    expect(await readBackup(text)).toMatchObject({ ok: true, backup: { changed: false, unreadable: 0 } });
    const other = await readBackup(text.replace('"mm":300', '"mm":301'));
    expect(other).toMatchObject({ ok: true, backup: { changed: true, unreadable: 0 } });
  });
});

describe('merging', () => {
  test('keeps the newer of two, adds what is missing and deletes nothing', async () => {
    const [first, second] = await store.listToys();
    if (!first || !second) throw new Error('no toys');
    const backup = await exportAll();
    await store.changeToy(first.id, { name: 'Newer here' });
    await (await store.removeToy(second.id))().then(() => store.removeToy(second.id));
    await store.saveReading(first.id, 'neck-girth', 333, 'tape', { anew: true });
    const own = await store.saveToy({ name: 'Only here', kind: 'round' });
    await store.setSetting('unit', 'cm');
    expect((await previewImport(await read(backup))).merge).toMatchObject({
      toys: { added: 1, changed: 0, removed: 0 },
      settings: none,
      photos: { added: 1, changed: 0, removed: 0 },
    });
    await importAll(await read(backup), 'merge');
    expect(await store.findToy(first.id)).toHaveProperty('name', 'Newer here');
    expect(await store.findToy(second.id)).toEqual(second);
    expect(await store.findToy(own.id)).toEqual(own);
    expect((await store.readingsOf(first.id))['neck-girth']?.map((reading) => reading.mm)).toEqual([333]);
    expect(await store.settings()).toEqual({ unit: 'cm' });
  });

  test('does not bring back a reading that was taken out', async () => {
    const backup = await exportAll();
    const [toy] = await store.listToys();
    const reading = (await store.historyOf(toy?.id ?? ''))[0];
    await store.removeReading(reading?.id ?? '');
    await importAll(await read(backup), 'merge');
    expect(await store.historyOf(toy?.id ?? '')).not.toContainEqual(reading);
  });

  test('twice is once', async () => {
    const backup = await exportAll();
    await importAll(await read(backup), 'merge');
    expect((await previewImport(await read(backup))).merge.readings).toEqual(none);
    expect(content(await exportAll())).toEqual(content(backup));
  });
});

describe('replacing', () => {
  test('keeps a copy of everything, which puts all back', async () => {
    const backup = await exportAll();
    await store.forgetEverything();
    await fillStore(2, 'Other');
    const before = await exportAll();
    expect((await previewImport(await read(backup))).replace.toys).toEqual({ added: 3, changed: 0, removed: 2 });
    expect(await copyKept()).toBeNull();
    await importAll(await read(backup), 'replace');
    expect(content(await exportAll())).toEqual(content(backup));
    expect(await copyKept()).not.toBeNull();
    await undoReplace();
    expect(content(await exportAll())).toEqual(content(before));
    await forgetCopy();
    await expect(undoReplace()).rejects.toMatchObject({ code: 'store-gone' });
  });

  test('that fails on the way leaves everything as it was, without a copy', async () => {
    const backup = await read(await exportAll());
    await store.forgetEverything();
    await fillStore(2, 'Other');
    const before = await exportAll();
    const { put } = IDBObjectStore.prototype;
    let left = 6;
    const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...row) {
      if (--left < 0) throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, row);
    });
    await expect(importAll(backup, 'replace')).rejects.toMatchObject({ code: 'store-full' });
    spy.mockRestore();
    expect(content(await exportAll())).toEqual(content(before));
    expect(await copyKept()).toBeNull();
  });
});

describe('what is not a backup is refused with a code', () => {
  const deep = `{"format":"hemling-backup","version":1,"toys":${'['.repeat(100_000)}${']'.repeat(100_000)}}`;
  test.each([
    ['', 'backup-not-json'],
    ['{"format":"hemling-backup","version":1,"toys":[', 'backup-not-json'],
    ['null', 'backup-foreign'],
    ['[]', 'backup-foreign'],
    ['{"format":"hemling-card","version":1}', 'backup-foreign'],
    ['{"format":"hemling-backup","version":"1"}', 'backup-foreign'],
    ['{"format":"hemling-backup","version":99}', 'backup-newer'],
    ['{"format":"hemling-backup","version":1}', 'backup-empty'],
    ['{"format":"hemling-backup","version":1,"toys":{"length":3},"readings":7}', 'backup-empty'],
    [deep, 'backup-too-deep'],
    [' '.repeat(64 * 1024 * 1024 + 1), 'backup-too-large'],
  ])('number %#', async (text, code) => {
    expect(await readBackup(text)).toEqual({ ok: false, code });
  });
});

describe('records that are not ours are left out and counted', () => {
  const toy = {
    id: 't',
    name: 'A',
    kind: 'upright',
    traits: {},
    note: '',
    corrections: {},
    kept: {},
    createdAt: 1,
    changedAt: 1,
  };
  const reading = { id: 'r', toyId: 't', measureId: 'neck-girth', mm: 300, from: 'tape', set: 1, takenAt: 1 };
  const photo = { toyId: 't', changedAt: 1 };
  const good = { toys: [toy] };
  test.each([
    ['a name of 10,000 letters', { toys: [toy, { ...toy, name: longest }] }],
    ['a body of no kind', { toys: [toy, { ...toy, kind: 7 }] }],
    ['no object', { toys: [toy, null, 5, 'x', []] }, 4],
    ['a negative length', { ...good, readings: [{ ...reading, mm: -1 }] }],
    ['an absurd length', { ...good, readings: [{ ...reading, mm: 1e9 }] }],
    [
      'a length that is none',
      {
        ...good,
        readings: [
          { ...reading, mm: null },
          { ...reading, mm: '300' },
        ],
      },
      2,
    ],
    ['a moment in a million years', { ...good, readings: [{ ...reading, takenAt: 3e16 }] }],
    [
      'a picture that is none',
      { ...good, photos: [{ ...photo, data: `data:image/jpeg;base64,${btoa('<svg onload=alert(1)>')}` }] },
    ],
    ['a picture of another type', { ...good, photos: [{ ...photo, data: 'data:image/svg+xml;base64,AAAA' }] }],
    ['a picture in broken letters', { ...good, photos: [{ ...photo, data: 'data:image/jpeg;base64,####' }] }],
    ['an order for nothing', { ...good, garments: [{ id: 'g', toyId: 't', order: {}, createdAt: 1, changedAt: 1 }] }],
    ['a setting of no key', { ...good, settings: [{ key: '', value: 1, changedAt: 1 }] }],
    ['a table of no name', { ...good, aside: [{ table: 'facts', at: 1, row: '{}' }] }],
  ] as [string, object, number?][])('%s', async (_, rows, unreadable = 1) => {
    const result = await readBackup(JSON.stringify({ format: 'hemling-backup', version: 1, ...rows }));
    expect(result).toMatchObject({ ok: true, backup: { unreadable, contents: { toys: [{ id: 't' }] } } });
  });

  test('keys that lead to prototypes are dropped', async () => {
    const hostile = JSON.stringify({ format: 'hemling-backup', version: 1, toys: [{ ...toy, kept: 'KEPT' }] });
    const kept = '{"__proto__":{"bad":1},"constructor":"x","prototype":"y","flag":"z"}'.replace('{"bad":1}', '1');
    const result = await readBackup(
      hostile.replace('"KEPT"', kept).replace('{"format"', '{"__proto__":{"bad":1},"format"'),
    );
    if (!result.ok) throw new Error(result.code);
    expect(Object.keys(result.backup.contents.toys[0]?.kept ?? {})).toEqual(['flag']);
    expect(({} as { bad?: number }).bad).toBeUndefined();
  });

  test('names in markup or in two directions are only text', async () => {
    const name = '<img src=x onerror=alert(1)>\u202e';
    const result = await readBackup(JSON.stringify({ format: 'hemling-backup', version: 1, toys: [{ ...toy, name }] }));
    if (!result.ok) throw new Error(result.code);
    expect(result.backup.contents.toys[0]?.name).toBe('<img src=x onerror=alert(1)>');
  });
});
