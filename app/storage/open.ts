import { wallClock } from './clock';
import { connect, erase, write } from './connection';
import { type StoreCode, StoreError } from './errors';

/**
 * `new`: the first time here. `known`: the store is as it was left. `cleared`: there was a store, and the browser
 * cleared it (as far as the small note beside it tells; where that is cleared too, it looks new).
 */
export type StoreState =
  | { readonly ok: true; readonly found: 'new' | 'known' }
  | { readonly ok: true; readonly found: 'cleared'; readonly lastSeen: number }
  | { readonly ok: false; readonly code: StoreCode };

/** Where the note is kept that a store was here: its last start, a moment. It holds nothing about the maker. */
const NOTE = 'hemling-store';
/** The folder of the second copies in the origin's private file system. */
export const COPIES_FOLDER = 'hemling';

/** Opens the store, within a time limit; never throws. Call again to try again. */
export async function openStore(): Promise<StoreState> {
  try {
    const store = await connect();
    const at = wallClock();
    const lastSeen = readNote();
    const known = await store.facts.get('sentinel');
    if (!known) await write(['facts'], undefined, (current) => current.facts.put({ id: 'sentinel', at }));
    writeNote(at);
    if (known) return { ok: true, found: 'known' };
    return lastSeen === undefined ? { ok: true, found: 'new' } : { ok: true, found: 'cleared', lastSeen };
  } catch (error) {
    return { ok: false, code: error instanceof StoreError ? error.code : 'store-broken' };
  }
}

/** Erases everything the store and the browser's notes keep on this device, here and in every other tab, for good. Throws StoreError. */
export async function forgetEverything(): Promise<void> {
  await erase();
  await eraseCopies();
  for (const storage of storages())
    for (const key of Object.keys(storage)) if (key.startsWith('hemling')) storage.removeItem(key);
}

/** The second copies on this device (see copies/own.ts). */
async function eraseCopies(): Promise<void> {
  try {
    await (await navigator.storage.getDirectory()).removeEntry(COPIES_FOLDER, { recursive: true });
  } catch {
    // There were none, or the browser has no place for them.
  }
}

function readNote(): number | undefined {
  const note = Number(storages()[0]?.getItem(NOTE) ?? Number.NaN);
  return Number.isFinite(note) ? note : undefined;
}

function writeNote(at: number): void {
  try {
    storages()[0]?.setItem(NOTE, String(at));
  } catch {
    // A full or forbidden localStorage only means that a cleared store will look like a new one.
  }
}

/** localStorage, then sessionStorage; merely naming them throws where they are forbidden. */
function storages(): Storage[] {
  try {
    return [localStorage, sessionStorage];
  } catch {
    return [];
  }
}
