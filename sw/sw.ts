/**
 * The service worker: keeps the app's own files on the device and answers with them when there is no network, and
 * takes in what other apps share. It never reads what a maker measured, nor what was shared. A new version waits until
 * the page asks it to take over.
 */
import { PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { receiveShare, SHARE_PATH } from '../app/sharing/inbox';
import { cleanUp, fromEarlierBuild, isAsset } from './earlier-build';

declare const self: ServiceWorkerGlobalScope;
/** The files of this build, put in by the build itself. Names that tell their content have no revision. */
declare const KEPT_FILES: { url: string; revision: string | null }[];

const keeper = new PrecacheController();
keeper.addToCacheList(KEPT_FILES);

registerRoute(new PrecacheRoute(keeper));
registerRoute(({ url, sameOrigin }) => sameOrigin && isAsset(url), fromEarlierBuild);
registerRoute(
  ({ url }) => url.href === home(SHARE_PATH),
  ({ request }) => receiveShare(request, home()),
  'POST',
);
registerRoute(new NavigationRoute(firstPage()));

self.addEventListener('install', (event) => {
  keeper.install(event);
});

/** The first install serves the page that started it too, so that what it loads later is there without a network. */
self.addEventListener('activate', (event) => {
  const wanted = new Set(keeper.getURLsToCacheKeys().values());
  event.waitUntil(cleanUp(keeper.strategy.cacheName, wanted).then(() => self.clients.claim()));
});

self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
});

/** The kept page for the app's own address; any other address below it leads there, where relative addresses hold. */
function firstPage() {
  const answer = keeper.createHandlerBoundToURL('index.html');
  return async (asked: Parameters<typeof answer>[0]) =>
    asked.url.href.split(/[?#]/)[0] === home() ? answer(asked) : Response.redirect(home(), 302);
}

function home(path = ''): string {
  return new URL(path, self.registration.scope).href;
}
