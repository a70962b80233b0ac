/**
 * The inbox: what other apps share to Hemling waits here until the app looks. The service worker puts it in, even
 * before the app is open; the app takes it out. Nothing is read or judged here, and nothing of the store is touched.
 * A door of its own, so that the service worker stays small.
 */
import { type DBSchema, deleteDB, openDB } from 'idb';

/** The address below the app's own that the manifest's `share_target` names. */
export const SHARE_PATH = 'share';
/** Where the app is sent to look into the inbox. */
const LOOK = '#/card?shared';

/** At most so many things wait, and none larger than a photo may be: what is beyond is left out. */
const MOST_THINGS = 8;
const MOST_BYTES = 32 * 1024 * 1024;

interface Inbox extends DBSchema {
  waiting: { key: number; value: Blob | string };
}

/** Takes a form that another app posted into the inbox, and sends the browser to where the app looks. Never throws. */
export async function receiveShare(request: Request, scope: string): Promise<Response> {
  try {
    const form = await request.formData();
    await put([...form.values()].filter((thing) => size(thing) > 0 && size(thing) <= MOST_BYTES).slice(0, MOST_THINGS));
  } catch {
    // A form that cannot be read leaves the inbox as it is; the app then says that nothing came.
  }
  return Response.redirect(new URL(LOOK, scope).href, 303);
}

/** Everything that waits, oldest first; the inbox is empty afterwards. Throws when the browser has no storage. */
export async function takeShared(): Promise<(Blob | string)[]> {
  const inbox = await open();
  try {
    const work = inbox.transaction('waiting', 'readwrite');
    const things = await work.store.getAll();
    await work.store.clear();
    await work.done;
    return things;
  } finally {
    inbox.close();
  }
}

/** Throws away what waits, and the inbox with it. Throws when the browser has no storage. */
export const forgetShared = (): Promise<void> => deleteDB(NAME);

async function put(things: readonly (Blob | string)[]): Promise<void> {
  const inbox = await open();
  try {
    const work = inbox.transaction('waiting', 'readwrite');
    await work.store.clear();
    for (const thing of things) await work.store.add(thing);
    await work.done;
  } finally {
    inbox.close();
  }
}

const NAME = 'hemling-inbox';
const open = () =>
  openDB<Inbox>(NAME, 1, {
    upgrade: (database) => void database.createObjectStore('waiting', { autoIncrement: true }),
  });

const size = (thing: Blob | string) => (typeof thing === 'string' ? thing.trim().length : thing.size);
