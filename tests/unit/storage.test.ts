import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { type Card, type MeasureId, usualTraits } from '../../app/body';
import * as store from '../../app/storage';
import { disconnect } from '../../app/storage/connection';
import { JPEG, longest } from './storage-samples';

afterEach(() => store.forgetEverything());

const bramble = { name: 'Bramble', kind: 'upright' } as const;
const lengths = async (toyId: string, id: MeasureId = 'neck-girth') =>
  (await store.readingsOf(toyId))[id]?.map((reading) => reading.mm);

describe('toys', () => {
  test('are new the first time and known the next', async () => {
    expect(await store.openStore()).toEqual({ ok: true, found: 'new' });
    await store.saveToy(bramble);
    expect(await store.openStore()).toEqual({ ok: true, found: 'known' });
    expect((await store.listToys()).map((toy) => toy.name)).toEqual(['Bramble']);
  });

  test('keep their names tidy: one line, nothing unseen, at most 80 characters', async () => {
    const toy = await store.saveToy({ ...bramble, name: `\u202eBr\u0000am\nble\u2066 ${longest}` });
    expect(toy.name).toMatch(/^Bram ble x+$/);
    expect(Array.from(toy.name)).toHaveLength(80);
    expect(await store.saveToy({ ...bramble, name: '<b>Ünï 🧸</b>' })).toHaveProperty('name', '<b>Ünï 🧸</b>');
  });

  test('keep in names and notes the marks that Arabic, Persian and emoji need', async () => {
    const name = '\u061cدبدوب\u200f \u200eB\u200e نی\u200cنی 👩\u200d🎨';
    const toy = await store.saveToy({ ...bramble, name, note: `${name}\n${name}` });
    expect([toy.name, toy.note]).toEqual([name, `${name}\n${name}`]);
  });

  test('change only in what is named', async () => {
    const toy = await store.saveToy({ ...bramble, note: 'kept\nas it is' });
    const changed = await store.changeToy(toy.id, { traits: { ...usualTraits, tail: true } });
    expect(changed).toEqual({ ...toy, traits: { ...usualTraits, tail: true }, changedAt: changed.changedAt });
    expect(await store.findToy(toy.id)).toEqual(changed);
  });

  test('remember the flags that were kept, and forget them', async () => {
    const { id } = await store.saveToy(bramble);
    await store.keepFlag(id, 'paw-half', '200/90');
    expect((await store.findToy(id))?.kept).toEqual({ 'paw-half': '200/90' });
    await store.keepFlag(id, 'paw-half', null);
    expect((await store.findToy(id))?.kept).toEqual({});
  });

  test('go with all that is theirs, and come back with it', async () => {
    const toy = await store.saveToy(bramble);
    await store.saveReading(toy.id, 'neck-girth', 300);
    const garment = await store.saveGarment(toy.id, { garment: 'hooded-top' });
    await store.savePhoto(toy.id, JPEG);
    await store.savePhoto(garment.id, JPEG);
    await store.setPlace(toy.id, null, 'neck-girth');
    const undo = await store.removeToy(toy.id);
    expect([await store.listToys(), await store.historyOf(toy.id), await store.garmentsOf(toy.id)]).toEqual([
      [],
      [],
      [],
    ]);
    expect([await store.photoOf(toy.id), await store.whereWasI()]).toEqual([undefined, undefined]);
    expect(await store.photoOf(garment.id)).toBeUndefined();
    await undo();
    expect(await store.listToys()).toEqual([toy]);
    expect(await lengths(toy.id)).toEqual([300]);
    expect((await store.photoOf(toy.id))?.size).toBe(JPEG.size);
    expect((await store.photoOf(garment.id))?.size).toBe(JPEG.size);
    expect(await store.whereWasI()).toMatchObject({ toyId: toy.id, step: 'neck-girth' });
  });

  test('have a unit of their own, or none again', async () => {
    const { id } = await store.saveToy(bramble);
    await store.changeToy(id, { unit: 'cm' });
    await store.changeToy(id, { note: 'Soft.' });
    expect(await store.findToy(id)).toMatchObject({ unit: 'cm', note: 'Soft.' });
    await store.changeToy(id, { unit: null });
    expect(await store.findToy(id)).not.toHaveProperty('unit');
  });
});

describe('readings', () => {
  test('measured anew begin a set that counts alone, and the history keeps all', async () => {
    const toy = await store.saveToy(bramble);
    await store.saveReading(toy.id, 'neck-girth', 300);
    await store.saveReading(toy.id, 'neck-girth', 310, 'tape', { anew: true });
    await store.saveReading(toy.id, 'neck-girth', 312.7);
    expect(await lengths(toy.id)).toEqual([310, 312.7]);
    expect((await store.historyOf(toy.id)).map((reading) => reading.mm)).toEqual([300, 310, 312.7]);
  });

  test('taken out stop counting; an older set counts again; undo puts them back', async () => {
    const toy = await store.saveToy(bramble);
    await store.saveReading(toy.id, 'neck-girth', 300);
    const wrong = await store.saveReading(toy.id, 'neck-girth', 31, 'tape', { anew: true });
    const undo = await store.removeReading(wrong.id);
    expect(await lengths(toy.id)).toEqual([300]);
    await undo();
    expect(await lengths(toy.id)).toEqual([31]);
  });

  test.each([0, -1, 0.99, 3000.1, Number.NaN, Number.POSITIVE_INFINITY])(
    'of %s mm are refused and handed back',
    async (mm) => {
      const toy = await store.saveToy(bramble);
      const refused = store.saveReading(toy.id, 'neck-girth', mm);
      await expect(refused).rejects.toMatchObject({
        code: 'store-bad-value',
        unsaved: { mm, measureId: 'neck-girth' },
      });
      expect(await store.historyOf(toy.id)).toEqual([]);
    },
  );

  test('of a toy that is gone are refused and handed back', async () => {
    const refused = store.saveReading('nobody', 'neck-girth', 300);
    await expect(refused).rejects.toMatchObject({ code: 'store-gone', unsaved: { mm: 300 } });
  });
});

describe('failures', () => {
  const quota = () => new DOMException('full', 'QuotaExceededError');
  const aborted = () => Object.assign(new Error('aborted'), { name: 'AbortError', inner: quota() });

  test.each([
    ['thrown', quota],
    ['inside an abort', aborted],
  ])('a full store, %s, is told as full and hands the value back', async (_, cause) => {
    const toy = await store.saveToy(bramble);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw cause();
    });
    const refused = store.saveReading(toy.id, 'neck-girth', 300);
    await expect(refused).rejects.toMatchObject({ code: 'store-full', unsaved: { mm: 300 } });
    put.mockRestore();
    expect(await store.historyOf(toy.id)).toEqual([]);
  });

  test('a connection lost once is opened again and the write repeated; lost for good, the value is handed back', async () => {
    let failures = 0;
    const begin = watchTransactions((_, mode) => {
      if (mode === 'readwrite' && failures-- > 0) throw new DOMException('lost', 'InvalidStateError');
    });
    const toy = await store.saveToy(bramble);
    failures = 1;
    await store.saveReading(toy.id, 'neck-girth', 300);
    expect(await lengths(toy.id)).toEqual([300]);
    failures = 1000;
    const refused = store.saveReading(toy.id, 'neck-girth', 301);
    await expect(refused).rejects.toMatchObject({ code: 'store-broken', unsaved: { mm: 301 } });
    begin.mockRestore();
    expect(await lengths(toy.id)).toEqual([300]);
  });
});

test('every transaction that writes asks for strict durability', async () => {
  const asked: unknown[] = [];
  const begin = watchTransactions((_, mode, options) => mode === 'readwrite' && asked.push(options?.durability));
  const toy = await store.saveToy(bramble);
  await store.saveReading(toy.id, 'neck-girth', 300);
  await store.setSetting('unit', 'in');
  begin.mockRestore();
  expect(asked).toEqual(['strict', 'strict', 'strict']);
});

/** Dexie binds `transaction` when it opens, so the connection is a new one. */
function watchTransactions(look: (...how: Parameters<IDBDatabase['transaction']>) => void) {
  disconnect();
  const begin = IDBDatabase.prototype.transaction;
  return vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...how) {
    look(...how);
    return begin.apply(this, how);
  });
}

describe('cards', () => {
  test('go out with what counts and come in as a toy of their own', async () => {
    const toy = await store.saveToy({ ...bramble, traits: { ...usualTraits, ears: 'top' }, corrections: { hem: 4 } });
    await store.saveReading(toy.id, 'neck-girth', 299);
    await store.saveReading(toy.id, 'neck-girth', 300, 'tape', { anew: true });
    await store.saveReading(toy.id, 'neck-girth', 301.5);
    await store.saveGarment(toy.id, { garment: 'hooded-top', choices: { hood: true } });
    const card = await store.cardOf(toy.id, 'in');
    expect(card).toMatchObject({
      format: 'hemling-card',
      version: 1,
      toy: { name: 'Bramble', body: 'upright', traits: { ears: 'top' } },
      readings: { 'neck-girth': [300, 301.5] },
      corrections: { hem: 4 },
      orders: [{ garment: 'hooded-top', choices: { hood: true } }],
    });
    const second = await store.addCard(card);
    const third = await store.addCard(card);
    expect([second.name, third.name]).toEqual(['Bramble 2', 'Bramble 3']);
    expect(await store.cardOf(third.id, 'in')).toEqual({ ...card, toy: { ...card.toy, name: 'Bramble 3' } });
    expect(await store.findToy(toy.id)).toEqual(toy);
  });

  test('with lengths that are none are kept not at all', async () => {
    const card: Card = {
      format: 'hemling-card',
      version: 1,
      toy: { name: 'X', body: 'round', traits: {} },
      unit: 'cm',
      taken: '2026-01-02',
      note: '',
      readings: { 'neck-girth': [100, -5] },
    };
    await expect(store.addCard(card)).rejects.toMatchObject({ code: 'store-bad-value' });
    expect(await store.listToys()).toEqual([]);
  });
});

test('watching a toy tells of every change, until stopped', async () => {
  const toy = await store.saveToy(bramble);
  const seen: number[] = [];
  const stop = store.watchToy(toy.id, ({ readings }) => seen.push(readings['neck-girth']?.length ?? 0));
  await vi.waitFor(() => expect(seen).toEqual([0]));
  await store.saveReading(toy.id, 'neck-girth', 300);
  await vi.waitFor(() => expect(seen.at(-1)).toBe(1));
  stop();
  const later: number[] = [];
  const stopLater = store.watchToy(toy.id, ({ readings }) => later.push(readings['neck-girth']?.length ?? 0));
  await store.saveReading(toy.id, 'neck-girth', 301);
  await vi.waitFor(() => expect(later.at(-1)).toBe(2));
  stopLater();
  expect(seen.at(-1)).toBe(1);
});

test('a backup is suggested after ten readings without one', async () => {
  const toy = await store.saveToy(bramble);
  for (let each = 0; each < 9; each++) await store.saveReading(toy.id, 'neck-girth', 300 + each);
  expect(await store.health()).toMatchObject({ readingsSince: 9, remind: false, lastBackup: null });
  await store.saveReading(toy.id, 'chest-girth', 400);
  expect(await store.health()).toMatchObject({ readingsSince: 10, remind: true });
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 1000 });
  await store.backedUp();
  expect(await store.health()).toMatchObject({ readingsSince: 0, remind: false });
  vi.useRealTimers();
});
