import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import * as store from '../../app/storage';

afterEach(() => store.forgetEverything());

const lengths = async (toyId: string) => (await store.readingsOf(toyId))['neck-girth']?.map((reading) => reading.mm);

test('a mistyped reading gives way to the right one, in its own set, and stays gone', async () => {
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  await store.saveReading(id, 'neck-girth', 300);
  const mistyped = await store.saveReading(id, 'neck-girth', 30);
  const right = await store.saveReading(id, 'neck-girth', 303, 'tape', { instead: mistyped.id });
  expect(right.set).toBe(mistyped.set);
  expect(await lengths(id)).toEqual([300, 303]);
  expect((await store.historyOf(id)).map((reading) => reading.mm)).toEqual([300, 303]);
});

test('a mistyped reading that began a new set is put right in that set, not in one more', async () => {
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  await store.saveReading(id, 'neck-girth', 300);
  const mistyped = await store.saveReading(id, 'neck-girth', 30, 'tape', { anew: true });
  const right = await store.saveReading(id, 'neck-girth', 303, 'tape', { anew: true, instead: mistyped.id });
  expect(right.set).toBe(mistyped.set);
  expect(await lengths(id)).toEqual([303]);
});

test('nothing is taken back when the right reading cannot be kept', async () => {
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  const { id: mistyped } = await store.saveReading(id, 'neck-girth', 300);
  await expect(store.saveReading(id, 'neck-girth', 9999, 'tape', { instead: mistyped })).rejects.toThrow(
    'store-bad-value',
  );
  expect(await lengths(id)).toEqual([300]);
});
