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

/** The same where what came was refused. */
const REFUSED = '#/card?shared=too-large';

/** A share is refused whole beyond this, bytes: any page may post to this address, and a card is far smaller. */
const MOST_BYTES = 8 * 1024 * 1024;
/** What a form says around its things. */
const AROUND_BYTES = 64 * 1024;
/** All that ever waits. Where there is no room left, the oldest makes way. */
const MOST_THINGS = 8;
const ROOM_BYTES = 16 * 1024 * 1024;

interface Inbox extends DBSchema {
  waiting: { key: number; value: Blob | string };
}

/** Takes a form that another app posted into the inbox, and sends the browser to where the app looks. Never throws. */
export async function receiveShare(request: Request, scope: string): Promise<Response> {
  const go = (where: string) => Response.redirect(new URL(where, scope).href, 303);
  try {
    const things = [...(await formOf(request)).values()].filter((thing) => size(thing) > 0);
    if (things.some((thing) => size(thing) > MOST_BYTES)) return go(REFUSED);
    await put(things.slice(0, MOST_THINGS));
  } catch (error) {
    if (error instanceof TooLarge) return go(REFUSED);
    // A form that cannot be read leaves the inbox as it is; the app then says that nothing came.
  }
  return go(LOOK);
}

class TooLarge extends Error {}

/** The form, read no further than it may be long. Browsers that do not give the bytes one by one read it whole. */
function formOf(request: Request): Promise<FormData> {
  if (!request.body) return request.formData();
  let bytes = 0;
  const counted = new TransformStream<Uint8Array, Uint8Array>({
    transform: (chunk, rest) => {
      bytes += chunk.byteLength;
      if (bytes > MOST_BYTES + AROUND_BYTES) throw new TooLarge();
      rest.enqueue(chunk);
    },
  });
  const headers = { 'content-type': request.headers.get('content-type') ?? '' };
  return new Response(request.body.pipeThrough(counted), { headers }).formData().catch((error) => {
    throw bytes > MOST_BYTES + AROUND_BYTES ? new TooLarge() : error;
  });
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
    const [keys, waiting] = await Promise.all([work.store.getAllKeys(), work.store.getAll()]);
    const all = [...waiting, ...things];
    for (const [place, key] of keys.entries()) if (!hasRoom(all.slice(place))) await work.store.delete(key);
    for (const thing of newest(things)) await work.store.add(thing);
    await work.done;
  } finally {
    inbox.close();
  }
}

const hasRoom = (things: readonly (Blob | string)[]) =>
  things.length <= MOST_THINGS && things.reduce((sum, thing) => sum + size(thing), 0) <= ROOM_BYTES;

/** Of one share, as many of the last as there is room for. */
const newest = (things: readonly (Blob | string)[]) =>
  things.slice(things.findIndex((_, at) => hasRoom(things.slice(at))));

const NAME = 'hemling-inbox';
const open = () =>
  openDB<Inbox>(NAME, 1, {
    upgrade: (database) => void database.createObjectStore('waiting', { autoIncrement: true }),
  });

const size = (thing: Blob | string) => (typeof thing === 'string' ? thing.trim().length : thing.size);
