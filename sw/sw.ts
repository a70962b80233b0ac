/**
 * The service worker: keeps the app's own files on the device and answers with them when there is no network, and
 * takes in what other apps share. It never reads what a maker measured, nor what was shared. A new version waits until
 * the page asks it to take over.
 */
import { receiveShare, SHARE_PATH } from '../app/sharing/inbox';
import { cleanUp, fromEarlierBuild, isAsset } from './earlier-build';
import { answerWith, fileAt, keepAll } from './files';

declare const self: ServiceWorkerGlobalScope;

const home = (path = '') => new URL(path, self.registration.scope).href;

self.addEventListener('fetch', (event) => {
  const answer = answerTo(event.request);
  if (answer) event.respondWith(answer);
});

/** No answer of ours leaves the request to the browser. */
function answerTo(request: Request): Promise<Response> | undefined {
  const { url, method, mode } = request;
  if (method === 'POST') return url === home(SHARE_PATH) ? receiveShare(request, home()) : undefined;
  if (method !== 'GET' || !url.startsWith(home())) return undefined;
  const file = fileAt(url);
  if (mode === 'navigate' && file === fileAt(home('index.html'))) return firstPage(request);
  if (file) return answerWith(file);
  if (mode === 'navigate') return firstPage(request);
  return isAsset(url) ? fromEarlierBuild(request) : undefined;
}

/**
 * The kept page for the app's own address; any other address below it leads there, where relative addresses hold. Where
 * it was cleared and the host has a newer one by now, that one: it is not kept, the newer version will keep it itself.
 */
async function firstPage(request: Request): Promise<Response> {
  const page = fileAt(home('index.html'));
  if (!page || request.url.split(/[?#]/)[0] !== home()) return Response.redirect(home(), 302);
  return answerWith(page).catch(() => fetch(request));
}

self.addEventListener('install', (event) => {
  event.waitUntil(look({ bytes: true }));
});

/** The first install serves the page that started it too, so that what it loads later is there without a network. */
self.addEventListener('activate', (event) => {
  event.waitUntil(cleanUp().then(() => self.clients.claim()));
});

/** What a page may ask; whoever asks with a port is answered there. An empty script in our place answers nothing. */
const deeds: Readonly<Record<string, (language?: string) => Promise<void>>> = {
  SKIP_WAITING: () => self.skipWaiting(),
  HELLO: async () => undefined,
  /** Fills up what was cleared; the first time it looks at every byte, since a device may spoil what it keeps. */
  TEND: (language) => look({ bytes: !looked, ...(language && { language }) }),
  MEND: () => look({ bytes: true }),
};

let looked = false;

async function look(how: Parameters<typeof keepAll>[0]): Promise<void> {
  looked = true;
  await keepAll(how);
}

self.addEventListener('message', (event) => {
  const deed = Object.entries(deeds).find(([name]) => name === event.data?.type)?.[1];
  if (!deed) return;
  const answer = (done: boolean) => event.ports[0]?.postMessage(done);
  event.waitUntil(
    deed(languageIn(event.data)).then(
      () => answer(true),
      () => answer(false),
    ),
  );
});

/** The language a page speaks, without its country. */
const languageIn = (said: unknown): string | undefined =>
  said instanceof Object && 'language' in said ? String(said.language).split('-')[0] : undefined;
