/**
 * The service worker: keeps the app's own files on the device and answers with them when there is no network.
 * It never reads what a maker measured. A new version waits until the page asks it to take over.
 */
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope;
/** The files of this build, put in by the build itself. */
declare const KEPT_FILES: { url: string; revision: string }[];

cleanupOutdatedCaches();
precacheAndRoute(KEPT_FILES);
registerRoute(new NavigationRoute(firstPage()));

self.addEventListener('message', (event: ExtendableMessageEvent) => {
  if (event.data?.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
});

/** The first install serves the page that started it too, so that what it loads later is there without a network. */
self.addEventListener('activate', (event: ExtendableEvent) => event.waitUntil(self.clients.claim()));

/** The kept page for the app's own address; any other address below it leads there, where relative addresses hold. */
function firstPage() {
  const answer = createHandlerBoundToURL('index.html');
  return async (asked: Parameters<typeof answer>[0]) => {
    const home = new URL(self.registration.scope);
    return asked.url.pathname === home.pathname ? answer(asked) : Response.redirect(home.href, 302);
  };
}
