import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import * as store from '../../app/storage';
import { JPEG } from './storage-samples';

afterEach(() => store.forgetEverything());

const bramble: store.NewToy = { name: 'Bramble', kind: 'upright' };
const order = { garment: 'tee' };
const made = { at: 1, engine: '0.1.0', toyId: 'a', toy: 'Moss', order, measures: {}, sizes: { 'place.chest': 400 } };

test('remember how they were made, what fitted, that they are put away; ordered otherwise they still do', async () => {
  const toy = await store.saveToy(bramble);
  const { id } = await store.saveGarment(toy.id, order, undefined, made);
  await store.changeGarment(id, { made, note: 'Long in the sleeve.', awayAt: 2, sewn: ['sides'] });
  await store.saveGarment(toy.id, { ...order, fit: 'roomy' }, id);
  const all = { made, like: made, note: 'Long in the sleeve.', awayAt: 2, sewn: ['sides'] };
  expect((await store.garmentsOf(toy.id))[0]).toMatchObject(all);
  await store.changeGarment(id, { awayAt: null, note: null });
  const [kept] = await store.garmentsOf(toy.id);
  expect(kept).not.toHaveProperty('awayAt');
  expect(kept).not.toHaveProperty('note');
  await expect(store.changeGarment(id, { awayAt: -1 })).rejects.toMatchObject({ code: 'store-bad-value' });
  await expect(store.changeGarment('none', {})).rejects.toMatchObject({ code: 'store-gone' });
});

test('take their photo with them, and bring it back', async () => {
  const toy = await store.saveToy(bramble);
  const { id } = await store.saveGarment(toy.id, order);
  await store.savePhoto(id, JPEG);
  const undo = await store.removeGarment(id);
  expect([await store.garmentsOf(toy.id), await store.photoOf(id)]).toEqual([[], undefined]);
  await undo();
  expect((await store.photoOf(id))?.size).toBe(JPEG.size);
});
