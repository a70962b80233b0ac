import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import type { Place } from './rows';

/** Remembers how far the maker has come with a toy, so that the flow resumes at `step` after anything. */
export async function setPlace(toyId: string, garmentId: string | null, step: string): Promise<void> {
  const place: Place = { toyId, garmentId, step, at: wallClock() };
  await write(['places'], place, async (store) => {
    const last = await store.places.orderBy('at').last();
    await store.places.put({ ...place, at: nextMoment(last?.at) });
  });
}

/** Where the maker was: with `toyId`, or, without one, with any toy. Undefined when she was nowhere yet. */
export async function whereWasI(toyId?: string): Promise<Place | undefined> {
  const found = await read((store) => (toyId ? store.places.get(toyId) : store.places.orderBy('at').last()));
  return found && readable('places', [found])[0];
}
