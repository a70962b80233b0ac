import type { Order } from '../body';
import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import { StoreError } from './errors';
import { newId } from './ids';
import type { Garment } from './rows';
import { readOrder } from './shapes';
import type { Undo } from './toys';

/** The garments ordered for a toy, oldest first. */
export async function garmentsOf(toyId: string): Promise<Garment[]> {
  return inOrder(await read((store) => store.garments.where('toyId').equals(toyId).toArray()));
}

export const inOrder = (found: readonly unknown[]): Garment[] =>
  readable('garments', found).sort((a, b) => a.createdAt - b.createdAt || a.id.localeCompare(b.id));

/** Keeps an order for a toy: a new one, or, given `garmentId`, in the place of that one. Throws `store-gone`. */
export async function saveGarment(toyId: string, order: Order, garmentId?: string): Promise<Garment> {
  const checked = readOrder(order);
  if (!checked) throw new StoreError('store-bad-value', order);
  const at = wallClock();
  const fresh: Garment = { id: garmentId ?? newId(), toyId, order: checked, createdAt: at, changedAt: at };
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

/** Remembers which steps of a garment's sewing are done. Throws `store-gone`. */
export async function saveSewn(garmentId: string, sewn: readonly string[]): Promise<void> {
  await write(['garments'], sewn, async (store) => {
    const row = await store.garments.get(garmentId);
    if (!row) throw new StoreError('store-gone', sewn);
    await store.garments.put({ ...row, sewn: [...sewn], changedAt: nextMoment(row.changedAt) });
  });
}

/** Removes a garment for good, unless taken back with the returned Undo. */
export async function removeGarment(garmentId: string): Promise<Undo> {
  const removed = await write(['garments'], undefined, async (store) => {
    const row = await store.garments.get(garmentId);
    await store.garments.delete(garmentId);
    return row;
  });
  return async () => {
    if (removed) await write(['garments'], removed, (store) => store.garments.put(removed));
  };
}
