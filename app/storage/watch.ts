import { liveQuery } from 'dexie';
import { readable, sorted } from './aside';
import { connect, disconnect } from './connection';
import type { Store } from './database';
import { isConnectionLost, type StoreError, toStoreError } from './errors';
import { inOrder } from './garments';
import { newestSets, type ReadingsByMeasure } from './readings';
import type { Garment, Place, Reading, Toy } from './rows';
import { byKey, type Settings } from './settings';
import { isNewer } from './sound';
import { tidyName } from './tidy';
import { newestFirst } from './toys';

export type Stop = () => void;
type Failed = (error: StoreError) => void;

/** Everything about one toy; `toy` is undefined when it was removed, or `newer`: only a newer build understands it. */
export type ToyWatched = {
  readonly toy: Toy | undefined;
  readonly newer: boolean;
  readonly readings: ReadingsByMeasure;
  readonly garments: readonly Garment[];
  readonly place: Place | undefined;
};

/** As many toys as a screen shows are there before the rest is read. */
const FIRST_SHOWN = 16;

/**
 * Calls `next` with all toys, the latest changed first, now and after every change in any tab; before that, once, with
 * the few changed last. `newer` names the toys that only a newer build understands.
 */
export function watchToys(next: (toys: Toy[], newer: string[]) => void, failed?: Failed): Stop {
  let stop: Stop = () => undefined;
  const all = () => {
    stop();
    stop = watch(
      (store) => store.toys.toArray() as Promise<unknown[]>,
      (found) => {
        const { rows, newer } = sorted('toys', found);
        next(
          newestFirst(rows),
          newer.map((row) => tidyName(String(Reflect.get(row as object, 'name')))),
        );
      },
      failed,
    );
  };
  stop = watch(
    (store) => store.toys.orderBy('changedAt').reverse().limit(FIRST_SHOWN).toArray() as Promise<unknown[]>,
    (found) => {
      const { rows } = sorted('toys', found);
      if (rows.length > 0) next(newestFirst(rows), []);
      const later = setTimeout(all);
      stop();
      stop = () => clearTimeout(later);
    },
    failed,
  );
  return () => stop();
}

/** Calls `next` with everything about one toy, now and after every change in any tab. */
export const watchToy = (toyId: string, next: (watched: ToyWatched) => void, failed?: Failed): Stop =>
  watch(
    (store) =>
      store.transaction('r', [store.toys, store.readings, store.garments, store.places], async () => ({
        toy: await store.toys.get(toyId),
        readings: await store.readings.where('toyId').equals(toyId).toArray(),
        garments: await store.garments.where('toyId').equals(toyId).toArray(),
        place: await store.places.get(toyId),
      })),
    ({ toy, readings, garments, place }) =>
      next({
        toy: toy && readable('toys', [toy])[0],
        newer: isNewer('toys', toy),
        readings: newestSets(readable<'readings'>('readings', readings) satisfies Reading[]),
        garments: inOrder(garments),
        place: place && readable('places', [place])[0],
      }),
    failed,
  );

/** Calls `next` with all settings, now and after every change in any tab. */
export const watchSettings = (next: (settings: Settings) => void, failed?: Failed): Stop =>
  watch(
    (store) => store.settings.toArray(),
    (found) => next(byKey(found)),
    failed,
  );

/** A lost connection is opened again and the query begun anew; only a second failure in a row is told. */
function watch<T>(query: (store: Store) => Promise<T>, next: (found: T) => void, failed?: Failed): Stop {
  let stopped = false;
  let stop: Stop | undefined;
  const begin = async (again: boolean) => {
    try {
      const store = await connect();
      if (stopped) return;
      let answered = false;
      const subscription = liveQuery(() => query(store)).subscribe({
        next: (found) => {
          answered = true;
          if (!stopped) next(found);
        },
        error: (cause: unknown) => fail(cause, again || answered),
      });
      stop = () => subscription.unsubscribe();
    } catch (cause) {
      fail(cause, false);
    }
  };
  const fail = (cause: unknown, again: boolean) => {
    if (stopped) return;
    if (!again || !isConnectionLost(cause)) return failed?.(toStoreError(cause));
    disconnect();
    void begin(false);
  };
  void begin(true);
  return () => {
    stopped = true;
    stop?.();
  };
}
