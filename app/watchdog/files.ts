import type { Outcome } from './outcome';

/** A service worker that does not answer within this is passed over, ms. */
const ANSWER_LIMIT_MS = 15_000;
/** Stands in the service worker we built, and in no page that a network puts in its place. */
const OURS = 'SKIP_WAITING';

/** Looks for a newer version and after the kept files, fetches what the page needs past every cache, and loads the first screen again. */
export async function tryAgain(): Promise<Outcome> {
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.update().catch(() => undefined);
  registration?.waiting?.postMessage({ type: 'SKIP_WAITING' });
  await tended();
  return loadAnew();
}

/**
 * Clears the app's own files, and nothing else, so that all of them are fetched again. Only where our host answers: a
 * device without a network would be left with nothing to start from.
 */
export async function clearFiles(): Promise<Outcome> {
  const answer = await fetch('./sw.js', { cache: 'reload' }).then(
    (found) => found.text(),
    () => '',
  );
  if (!answer.includes(OURS)) return 'no-network';
  const registration = await navigator.serviceWorker?.getRegistration();
  const scope = registration?.scope ?? new URL('./', location.href).href;
  // Other apps may live at the same origin.
  for (const name of await caches.keys()) if (name.endsWith(scope)) await caches.delete(name);
  await registration?.unregister();
  return loadAnew();
}

async function loadAnew(): Promise<undefined> {
  const needed = [
    ...document.querySelectorAll<HTMLElement>('script[src], link[rel="stylesheet"], link[rel="modulepreload"]'),
  ];
  const addresses = needed.map((each) => each.getAttribute('src') ?? each.getAttribute('href') ?? '');
  await Promise.all(['./', ...addresses].map((address) => fetch(address, { cache: 'reload' }).catch(() => undefined)));
  // What stands in the address may be what stopped the app.
  history.replaceState(null, '', location.pathname);
  location.reload();
}

/** Has the service worker look at every byte it keeps and fetch what is wrong. */
function tended(): Promise<void> {
  const worker = navigator.serviceWorker?.controller;
  if (!worker) return Promise.resolve();
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => done();
    setTimeout(done, ANSWER_LIMIT_MS);
    worker.postMessage({ type: 'MEND' }, [port2]);
  });
}
