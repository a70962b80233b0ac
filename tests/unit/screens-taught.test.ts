import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import { taughtBy } from '../../app/screens/shared/making/taught';
import * as store from '../../app/storage';

afterEach(() => store.forgetEverything());

/** A bear whose arms are a share of its chest. */
async function bear(name: string, chest: number, arm = 0.7, kind: 'upright' | 'round' = 'upright') {
  const { id } = await store.saveToy({ name, kind });
  const all = { 'chest-girth': 1, 'body-girth': 1.09, 'neck-girth': 0.65, 'head-girth': 0.95, 'arm-length': arm };
  for (const [measure, share] of Object.entries(all))
    await store.saveReading(id, measure as keyof typeof all, chest * share);
  return id;
}

const armShift = (taught: Awaited<ReturnType<typeof taughtBy>>) => taught?.['plush-bear']?.shifts['arm-length'] ?? 0;

test('nothing is learnt where there is no other toy, nor from one of another kind', async () => {
  const id = await bear('Moss', 380);
  await bear('Button', 500, 0.7, 'round');
  expect(await taughtBy({ id, kind: 'upright' })).toBeUndefined();
});

test('the others teach, never the toy itself; and one that is gone teaches no more', async () => {
  const id = await bear('Moss', 380, 0.3);
  const other = await bear('Fern', 360, 0.7);
  expect(armShift(await taughtBy({ id, kind: 'upright' }))).toBeGreaterThan(0.02);
  await store.removeToy(other);
  expect(await taughtBy({ id, kind: 'upright' })).toBeUndefined();
});

test('a number measured anew is learnt anew', async () => {
  const id = await bear('Moss', 380);
  const other = await bear('Fern', 360, 0.7);
  const long = armShift(await taughtBy({ id, kind: 'upright' }));
  await store.saveReading(other, 'arm-length', 0.45 * 360, 'tape', { anew: true });
  expect(armShift(await taughtBy({ id, kind: 'upright' }))).toBeLessThan(long - 0.02);
});
