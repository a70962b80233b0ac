import { findMeasure, type MeasureId, type Mm } from '../body';
import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import type { Store } from './database';
import { StoreError } from './errors';
import { newId } from './ids';
import type { Reading } from './rows';
import { LAST_BACKUP } from './settings';
import { orderOf, readRow } from './shapes';
import type { Undo } from './toys';

/** The readings that count, by measure, in the order taken. */
export type ReadingsByMeasure = { readonly [M in MeasureId]?: readonly Reading[] };

/**
 * Keeps one reading (mm), beside the earlier ones of its set; `anew` begins a new set, which from then on counts
 * alone; `instead` names a reading just mistyped, taken back in the same write. Resolves only when the reading is on
 * the disk: only then may the screen say "saved". Throws `store-bad-value` for what is no length from 1 to 3000 mm;
 * every failure carries the reading as `unsaved`.
 */
export async function saveReading(
  toyId: string,
  measureId: MeasureId,
  mm: Mm,
  from: Reading['from'] = 'tape',
  { anew = false, instead }: { readonly anew?: boolean; readonly instead?: string } = {},
): Promise<Reading> {
  const now = wallClock();
  const fresh: Reading = { id: newId(), toyId, measureId, mm, from, set: now, turn: now, takenAt: now, changedAt: now };
  if (!readRow('readings', fresh)) throw new StoreError('store-bad-value', fresh);
  return write(['toys', 'readings', 'settings', 'facts', 'typed'], fresh, async (store) => {
    if (!(await store.toys.get(toyId))) throw new StoreError('store-gone', fresh);
    const all = readable('readings', await store.readings.where('toyId').equals(toyId).toArray());
    const same = all.filter((reading) => reading.measureId === measureId);
    const turn = nextMoment(...same.flatMap((each) => [each.set, each.turn, each.changedAt]));
    const current = anew ? undefined : newestSets(same)[measureId];
    const mistyped = instead === undefined ? undefined : await store.readings.get(instead);
    const set = mistyped?.set ?? current?.[0]?.set ?? turn;
    const row = { ...fresh, set, turn, changedAt: turn };
    if (mistyped) await store.readings.put({ ...mistyped, removedAt: turn, changedAt: turn });
    await countReadings(store, 1);
    await store.readings.put(row);
    await store.typed.delete(typedId(toyId, measureId));
    return row;
  });
}

/** The name of what is being typed for a toy's measure; kept as a reading, it is typed no longer. */
export const typedId = (toyId: string, measureId: string): string => `${toyId} ${measureId}`;

/** Takes one reading out of the count; the returned Undo puts it back. Throws `store-gone`. */
export async function removeReading(readingId: string): Promise<Undo> {
  await mark(readingId, true);
  return () => mark(readingId, false);
}

function mark(readingId: string, removed: boolean): Promise<void> {
  return write(['readings'], undefined, async (store) => {
    const row = await store.readings.get(readingId);
    if (!row) throw new StoreError('store-gone');
    const { removedAt: _, ...kept } = row;
    const { turn, changedAt } = orderOf(row);
    const at = nextMoment(changedAt);
    await store.readings.put({ ...kept, turn, changedAt: at, ...(removed && { removedAt: at }) });
  });
}

/** Raises the count of readings that no backup holds; within a transaction over readings, settings and facts. */
export async function countReadings(store: Store, more: number): Promise<void> {
  await store.facts.put({ id: 'since-backup', readings: (await sinceBackup(store)) + more });
}

/** Readings kept since the last backup; in a store that never counted, those taken later by the device's clock. */
export async function sinceBackup(store: Store): Promise<number> {
  const fact = await store.facts.get('since-backup');
  if (fact?.id === 'since-backup' && Number.isFinite(fact.readings)) return fact.readings;
  const last = Number((await store.settings.get(LAST_BACKUP))?.value ?? 0);
  return store.readings
    .where('takenAt')
    .above(Number.isFinite(last) ? last : 0)
    .count();
}

/** Every reading ever taken of a toy and not taken back, set after set: its history. */
export async function historyOf(toyId: string): Promise<Reading[]> {
  return oldestFirst(await read((store) => store.readings.where('toyId').equals(toyId).toArray()));
}

/** The readings of a toy that count. */
export async function readingsOf(toyId: string): Promise<ReadingsByMeasure> {
  return newestSets(await historyOf(toyId));
}

export const oldestFirst = (found: readonly unknown[]): Reading[] =>
  readable('readings', found)
    .filter((reading) => reading.removedAt === undefined)
    .sort((a, b) => a.set - b.set || a.turn - b.turn || a.takenAt - b.takenAt || (a.id < b.id ? -1 : 1));

/** Of each measure the newest set, in the order taken. Readings of measures the catalogue does not know are left out. */
export function newestSets(readings: readonly Reading[]): ReadingsByMeasure {
  const sets: { [M in MeasureId]?: Reading[] } = {};
  for (const reading of oldestFirst(readings)) {
    if (!findMeasure(reading.measureId)) continue;
    const current = sets[reading.measureId];
    if (!current || (current[0]?.set ?? 0) < reading.set) sets[reading.measureId] = [reading];
    else if (current[0]?.set === reading.set) current.push(reading);
  }
  return sets;
}
