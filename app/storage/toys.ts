import { type BodyKind, type Traits, type Unit, usualTraits } from '../body';
import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import type { Store } from './database';
import { StoreError } from './errors';
import { newId } from './ids';
import type { Toy } from './rows';
import { readRow } from './shapes';
import { tidyName, tidyNote } from './tidy';

/** What a new toy needs; the rest has its usual value. */
export type NewToy = { readonly name: string; readonly kind: BodyKind } & Partial<
  Pick<Toy, 'traits' | 'note' | 'corrections'>
>;
export type ToyChange = Partial<Pick<Toy, 'name' | 'kind' | 'traits' | 'note' | 'corrections' | 'plays'>> & {
  /** Null: as the app is set. */
  readonly unit?: Unit | null;
};

/** Takes a deed back; may fail as any write. */
export type Undo = () => Promise<void>;

/** All toys, the latest changed first. */
export async function listToys(): Promise<Toy[]> {
  return newestFirst(readable('toys', await read((store) => store.toys.toArray())));
}

export const newestFirst = (toys: readonly Toy[]): Toy[] =>
  [...toys].sort((a, b) => b.changedAt - a.changedAt || (a.id < b.id ? -1 : 1));

/** One toy, or undefined when there is none by that id. */
export async function findToy(toyId: string): Promise<Toy | undefined> {
  const found = await read((store) => store.toys.get(toyId));
  return found && readable('toys', [found])[0];
}

/** Keeps a new toy under a new id; a toy of the same name stays another toy. Names are tidied (see `tidyName`). */
export async function saveToy(toy: NewToy): Promise<Toy> {
  const row = newToy(toy);
  return write(['toys'], row, async (store) => {
    const stamped = { ...row, changedAt: await nextToyMoment(store) };
    await store.toys.put(stamped);
    return stamped;
  });
}

/** The row of a new toy. Throws `store-bad-value` for an empty name or traits that are none. */
export function newToy(toy: NewToy): Toy {
  const at = wallClock();
  const traits: Traits = { ...usualTraits, ...toy.traits };
  const corrections = toy.corrections ?? {};
  return checked({
    id: newId(),
    ...toy,
    traits,
    corrections,
    note: toy.note ?? '',
    kept: {},
    createdAt: at,
    changedAt: at,
  });
}

/** Changes a toy's name, kind, traits, note, corrections or unit; what is not named stays. Throws `store-gone`. */
export function changeToy(toyId: string, change: ToyChange): Promise<Toy> {
  const { unit, ...others } = change;
  return update(toyId, change, ({ unit: before, ...toy }) => {
    const own = unit === undefined ? before : unit;
    return { ...toy, ...others, ...(own && { unit: own }) };
  });
}

/** Remembers that the maker keeps what `flag` doubts, as long as it is `value`; null forgets it. */
export function keepFlag(toyId: string, flag: string, value: string | number | null): Promise<Toy> {
  return update(toyId, { flag, value }, (toy) => {
    const { [flag]: _, ...others } = toy.kept;
    return { ...toy, kept: value === null ? others : { ...others, [flag]: value } };
  });
}

/** Removes a toy with its readings, garments, their photos and place, for good, unless taken back with the returned Undo. */
export async function removeToy(toyId: string): Promise<Undo> {
  const tables = ['toys', 'readings', 'garments', 'places', 'photos'] as const;
  const removed = await write(tables, undefined, async (store) => {
    const toys = await store.toys.where('id').equals(toyId).toArray();
    const readings = await store.readings.where('toyId').equals(toyId).toArray();
    const garments = await store.garments.where('toyId').equals(toyId).toArray();
    const places = await store.places.where('toyId').equals(toyId).toArray();
    const pictured = [toyId, ...garments.map(({ id }) => id)];
    const photos = await store.photos.where('toyId').anyOf(pictured).toArray();
    await store.photos.bulkDelete(pictured);
    await store.toys.delete(toyId);
    for (const table of [store.readings, store.garments, store.places] as const)
      await table.where('toyId').equals(toyId).delete();
    return { toys, readings, garments, places, photos };
  });
  return () =>
    write(tables, removed, async (store) => {
      await store.toys.bulkPut(removed.toys);
      await store.readings.bulkPut(removed.readings);
      await store.garments.bulkPut(removed.garments);
      await store.places.bulkPut(removed.places);
      await store.photos.bulkPut(removed.photos);
    });
}

function update(toyId: string, unsaved: unknown, change: (toy: Toy) => Toy): Promise<Toy> {
  return write(['toys'], unsaved, async (store) => {
    const kept: unknown = await store.toys.get(toyId);
    const toy = readRow('toys', kept);
    if (!toy) throw new StoreError('store-gone');
    const changed = checked({ ...change(toy), changedAt: await nextToyMoment(store, toy) });
    const { unit: _, ...others } = kept as Toy;
    await store.toys.put({ ...others, ...changed });
    return changed;
  });
}

/** Later than any toy was changed; within a transaction over toys. */
export async function nextToyMoment(store: Store, toy?: Toy): Promise<number> {
  const last: unknown = await store.toys.orderBy('changedAt').last();
  return nextMoment(readRow('toys', last)?.changedAt, toy?.changedAt);
}

function checked(toy: Toy): Toy {
  const row = readRow('toys', { ...toy, name: tidyName(toy.name), note: tidyNote(toy.note) });
  if (!row) throw new StoreError('store-bad-value', toy);
  return row;
}
