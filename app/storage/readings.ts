import { findMeasure, type MeasureId, type Mm } from '../body';
import { readable } from './aside';
import { read, write } from './connection';
import { StoreError } from './errors';
import { newId, nextMoment } from './ids';
import type { Reading } from './rows';
import { readRow } from './shapes';
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
  const at = nextMoment();
  const fresh: Reading = { id: newId(), toyId, measureId, mm, from, set: at, takenAt: at };
  if (!readRow('readings', fresh)) throw new StoreError('store-bad-value', fresh);
  return write(['toys', 'readings'], fresh, async (store) => {
    if (!(await store.toys.get(toyId))) throw new StoreError('store-gone', fresh);
    const earlier = anew ? [] : await store.readings.where('toyId').equals(toyId).toArray();
    const current = newestSets(readable('readings', earlier))[measureId];
    const mistyped = instead === undefined ? undefined : await store.readings.get(instead);
    const row = { ...fresh, set: mistyped?.set ?? current?.[0]?.set ?? fresh.set };
    if (mistyped) await store.readings.put({ ...mistyped, removedAt: at });
    await store.readings.put(row);
    return row;
  });
}

/** Takes one reading out of the count; the returned Undo puts it back. Throws `store-gone`. */
export async function removeReading(readingId: string): Promise<Undo> {
  await mark(readingId, nextMoment());
  return () => mark(readingId, undefined);
}

function mark(readingId: string, removedAt: number | undefined): Promise<void> {
  return write(['readings'], undefined, async (store) => {
    const row = await store.readings.get(readingId);
    if (!row) throw new StoreError('store-gone');
    const { removedAt: _, ...kept } = row;
    await store.readings.put(removedAt === undefined ? kept : { ...kept, removedAt });
  });
}

/** Every reading ever taken of a toy and not taken back, oldest first: its history. */
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
    .sort((a, b) => a.takenAt - b.takenAt || a.id.localeCompare(b.id));

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
