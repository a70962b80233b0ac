/** What is done for the store once the first screen is there, and never in its way. */
import { asRow } from './aside-text';
import { read, write } from './connection';
import type { Aside } from './rows';
import { isSound } from './sound';

/**
 * Tries every record that was set aside once more: this build may understand it. One that is sound goes back to its
 * table, unless another of its key is there by now. Resolves to how many went back.
 */
export async function tryAsideAgain(): Promise<number> {
  const waiting = await read((store) => store.aside.toArray());
  const sound = waiting.filter(({ table, row }) => isSound(table, asRow(table, row)));
  for (const each of sound) await putBack(each);
  return sound.length;
}

/** Whether a number is kept. */
export const hasReadings = async (): Promise<boolean> => (await read((store) => store.readings.limit(1).count())) > 0;

const putBack = ({ id, table, row }: Aside) =>
  write([table, 'aside'], undefined, async (store) => {
    if (id === undefined || !(await store.aside.get(id))) return;
    const rows = store.table<unknown, string>(table);
    const back = asRow(table, row) as object;
    const key = String(Reflect.get(back, String(rows.schema.primKey.keyPath)));
    if ((await rows.get(key)) !== undefined) return;
    await rows.put(back);
    await store.aside.delete(id);
  });
