import { useEffect, useState } from 'preact/hooks';
import {
  type Settings,
  type Stop,
  type StoreError,
  type Toy,
  type ToyWatched,
  watchSettings,
  watchToy,
  watchToys,
} from '../../storage';

/** What the store says: not yet anything, what it holds (kept up to date, whichever tab changes it), or why it cannot. */
export type Kept<T> =
  | { readonly state: 'waiting' }
  | { readonly state: 'here'; readonly value: T }
  | { readonly state: 'failed'; readonly error: StoreError };

type Watch<T> = (next: (value: T) => void, failed: (error: StoreError) => void) => Stop;

/** `newer` names toys that only a newer build understands. */
export type ToysKept = { readonly toys: readonly Toy[]; readonly newer: readonly string[] };

export const useToys = (): Kept<ToysKept> =>
  useKept<ToysKept>((next, failed) => watchToys((toys, newer) => next({ toys, newer }), failed), '');

export const useSettings = (): Kept<Settings> => useKept<Settings>(watchSettings, '');

export const useToy = (toyId: string): Kept<ToyWatched> =>
  useKept<ToyWatched>((next, failed) => watchToy(toyId, next, failed), toyId);

function useKept<T>(watch: Watch<T>, key: string): Kept<T> {
  const [kept, setKept] = useState<{ key: string; found: Kept<T> }>({ key, found: { state: 'waiting' } });
  useEffect(
    () =>
      watch(
        (value) => setKept({ key, found: { state: 'here', value } }),
        (error) => setKept({ key, found: { state: 'failed', error } }),
      ),
    [key],
  );
  return kept.key === key ? kept.found : { state: 'waiting' };
}
