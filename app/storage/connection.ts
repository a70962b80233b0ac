import { createStore, type Store } from './database';
import { isConnectionLost, type StoreCode, StoreError, toStoreError } from './errors';
import type { TableName } from './rows';

/** Opening and writing answer within this, or the screen says that the store does not answer; common practice. */
const TIME_LIMIT_MS = 8_000;
/** Older tabs of ours make way at once; one that has not after this will not. */
const BLOCKED_LIMIT_MS = 1_500;

/** Why this tab no longer has a store of its own accord; ends every later call. */
type Ended = Extract<StoreCode, 'store-outdated' | 'store-forgotten'>;

let store: Store | undefined;
let opening: Promise<Store> | undefined;
let ended: Ended | undefined;
const listeners = new Set<(code: Ended) => void>();

/** Opens the one connection, or gives the open one. Throws StoreError. */
export function connect(): Promise<Store> {
  if (ended) return Promise.reject(new StoreError(ended));
  if (store?.isOpen()) return Promise.resolve(store);
  opening ??= open().finally(() => {
    opening = undefined;
  });
  return opening;
}

async function open(): Promise<Store> {
  const current = createStore();
  store = current;
  current.on('versionchange', (event) =>
    end(current, event.newVersion === null ? 'store-forgotten' : 'store-outdated'),
  );
  const blocked = new Promise<never>((_, reject) => {
    current.on('blocked', () => {
      setTimeout(() => reject(new StoreError('store-blocked')), BLOCKED_LIMIT_MS);
    });
  });
  try {
    await within(Promise.race([current.open(), blocked]));
    return current;
  } catch (cause) {
    disconnect();
    throw toStoreError(cause);
  }
}

/** A newer tab upgrades or erases: make way at once, and tell. Returning false keeps Dexie's own handling out. */
function end(current: Store, code: Ended): false {
  current.close();
  if (current !== store) return false;
  ended = code;
  for (const tell of listeners) tell(code);
  return false;
}

/** Calls `tell` when this tab loses its store to another tab and must be loaded again. Returns the way to stop. */
export function onEnded(tell: (code: Ended) => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}

/** Drops the connection; the next call opens a new one. */
export function disconnect(): void {
  store?.close();
  store = undefined;
}

/** Erases the database; this tab goes on with an empty one, other tabs are told. */
export async function erase(): Promise<void> {
  const current = await connect().catch(() => createStore());
  store = undefined;
  await within(current.delete());
}

/** Runs `work` on the store; when the connection was lost, opens it again and tries once more. Throws StoreError. */
export async function read<T>(work: (store: Store) => PromiseLike<T>): Promise<T> {
  return attempt(work, undefined);
}

/**
 * Runs `work` in one strict transaction over `tables` and resolves only after its `complete`: what resolves is on the
 * disk. All or nothing. The work may run twice, so it puts by ids made beforehand. A failure throws StoreError with
 * `unsaved`, the value to be kept on the screen. `limit: false` is for long writes.
 */
export function write<T>(
  tables: readonly Tables[],
  unsaved: unknown,
  work: (store: Store) => PromiseLike<T>,
  limit = true,
): Promise<T> {
  const written = attempt((current) => {
    const done = current.transaction('rw', [...tables], () => work(current));
    return limit ? within(done) : done;
  }, unsaved);
  if (tables.some((table) => !BESIDE.includes(table))) written.then(tellWritten, () => undefined);
  return written;
}

/** Tables that no backup holds, or that change by themselves. */
const BESIDE: readonly Tables[] = ['facts', 'typed', 'copies', 'aside'];
const writeListeners = new Set<() => void>();

/** Calls `tell` after every write of this tab to what the maker keeps. Returns the way to stop. */
export function onWritten(tell: () => void): () => void {
  writeListeners.add(tell);
  return () => writeListeners.delete(tell);
}

/** Says so of a write that another thread did for this tab. */
export function tellWritten(): void {
  for (const tell of writeListeners) tell();
}

export type Tables = TableName | 'aside' | 'copies' | 'facts' | 'typed';

async function attempt<T>(work: (store: Store) => PromiseLike<T>, unsaved: unknown): Promise<T> {
  try {
    return await work(await connect());
  } catch (cause) {
    if (ended || !isConnectionLost(cause)) throw toStoreError(ended ? new StoreError(ended) : cause, unsaved);
  }
  disconnect();
  try {
    return await work(await connect());
  } catch (cause) {
    throw toStoreError(cause, unsaved);
  }
}

function within<T>(work: PromiseLike<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new StoreError('store-slow')), TIME_LIMIT_MS);
    work.then(resolve, reject).then(() => clearTimeout(timer));
  });
}
