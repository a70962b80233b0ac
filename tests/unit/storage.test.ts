import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import * as store from '../../app/storage';

afterEach(() => store.forgetEverything());

const bramble = { name: 'Bramble', kind: 'upright' } as const;

test('a toy and its readings are there after a new start', async () => {
  expect(await store.openStore()).toEqual({ ok: true, found: 'new' });
  const toy = await store.saveToy(bramble);
  await store.saveReading(toy.id, 'neck-girth', 300);
  await store.saveReading(toy.id, 'neck-girth', 304);
  expect((await store.listToys()).map((each) => each.name)).toEqual(['Bramble']);
  expect((await store.readingsOf(toy.id))['neck-girth']?.map((each) => each.mm)).toEqual([300, 304]);
  expect(await store.openStore()).toEqual({ ok: true, found: 'known' });
});

test('measuring anew begins a set that counts alone, and the history keeps all', async () => {
  const toy = await store.saveToy(bramble);
  await store.saveReading(toy.id, 'neck-girth', 300);
  await store.saveReading(toy.id, 'neck-girth', 310, 'tape', { anew: true });
  await store.saveReading(toy.id, 'neck-girth', 312);
  expect((await store.readingsOf(toy.id))['neck-girth']?.map((each) => each.mm)).toEqual([310, 312]);
  expect((await store.historyOf(toy.id)).map((each) => each.mm)).toEqual([300, 310, 312]);
});
