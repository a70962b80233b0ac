import type { Order } from '../body';
import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import { StoreError } from './errors';
import { newId } from './ids';
import type { Garment, Made } from './rows';
import { readOrder, readRow } from './shapes';
import type { Undo } from './toys';

/** The garments ordered for a toy, oldest first. */
export async function garmentsOf(toyId: string): Promise<Garment[]> {
  return inOrder(await read((store) => store.garments.where('toyId').equals(toyId).toArray()));
}

export const inOrder = (found: readonly unknown[]): Garment[] =>
  readable('garments', found).sort((a, b) => a.createdAt - b.createdAt || (a.id < b.id ? -1 : 1));

/**
 * Keeps an order for a toy: a new one (made again from `like`, where there is such a garment), or, given `garmentId`, in the
 * place of that one. Throws `store-gone`.
 */
export async function saveGarment(toyId: string, order: Order, garmentId?: string, like?: Made): Promise<Garment> {
  const checked = readOrder(order);
  if (!checked) throw new StoreError('store-bad-value', order);
  const at = wallClock();
  const fresh: Garment = {
    ...{ id: garmentId ?? newId(), toyId, order: checked, createdAt: at, changedAt: at },
    ...(like && { like }),
  };
  return write(['toys', 'garments'], order, async (store) => {
    if (!(await store.toys.get(toyId))) throw new StoreError('store-gone', order);
    const earlier = await store.garments.get(fresh.id);
    const row = earlier
      ? { ...earlier, ...fresh, createdAt: earlier.createdAt, changedAt: nextMoment(earlier.changedAt) }
      : fresh;
    await store.garments.put(row);
    return row;
  });
}

/** What is remembered of a garment beside its order; null forgets it. */
export type GarmentChange = {
  readonly [K in 'sewn' | 'made' | 'note' | 'awayAt']?: Garment[K] | null;
};

/** Remembers which steps of its sewing are done, how it was put on paper, a note, that it is put away. Throws `store-gone`. */
export async function changeGarment(garmentId: string, change: GarmentChange): Promise<void> {
  const forgotten = Object.entries(change).flatMap(([key, value]) => (value === null ? [key] : []));
  await write(['garments'], change, async (store) => {
    const row = await store.garments.get(garmentId);
    if (!row) throw new StoreError('store-gone', change);
    const changed = { ...row, ...change, changedAt: nextMoment(row.changedAt) };
    const kept = Object.fromEntries(Object.entries(changed).filter(([key]) => !forgotten.includes(key)));
    const checked = readRow('garments', kept);
    if (!checked) throw new StoreError('store-bad-value', change);
    await store.garments.put({ ...kept, ...checked });
  });
}

/** Removes a garment with its photo for good, unless taken back with the returned Undo. */
export async function removeGarment(garmentId: string): Promise<Undo> {
  const removed = await write(['garments', 'photos'], undefined, async (store) => {
    const row = await store.garments.get(garmentId);
    const photo = await store.photos.get(garmentId);
    await store.garments.delete(garmentId);
    await store.photos.delete(garmentId);
    return { row, photo };
  });
  return async () => {
    const { row, photo } = removed;
    if (!row) return;
    await write(['garments', 'photos'], row, async (store) => {
      await store.garments.put(row);
      if (photo) await store.photos.put(photo);
    });
  };
}
