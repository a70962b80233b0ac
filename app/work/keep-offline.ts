import { trustedAddress } from './trusted-address';

/** What the page needs of a version that waits: to hear of it, and to let it take over at a good moment. */
export type Waiting = { takeOver: () => void };

/** A version that does not answer within this is none of ours, ms: an empty script passes for a service worker too. */
const ANSWER_LIMIT_MS = 5_000;
/** A page that is never idle is kept all the same; and how long a first screen takes on most phones, ms. */
const QUIET_LIMIT_MS = 2_000;
const QUIET_GUESS_MS = 300;

/**
 * Starts the service worker, so that the app opens without a network from now on. It never takes over by itself:
 * `onWaiting` hears of each newer version, and the page reloads once one has been told to take over. A tab that another
 * tab brought the newer version upon is asked to reload in the same way. Newer versions are looked for at the start and
 * whenever the maker comes back to the app or to a network; what was cleared of the kept files is fetched again then.
 */
export async function keepOffline(onWaiting: (waiting: Waiting) => void): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  await shown();
  await quiet();
  const { Workbox } = await import('workbox-window');
  const address = trustedAddress('./sw.js');
  const worker = new Workbox(address);
  let told = false;
  worker.addEventListener('waiting', async ({ sw }) => {
    if (!sw || !(await answers(sw, 'HELLO'))) return;
    onWaiting({
      takeOver: () => {
        told = true;
        worker.messageSkipWaiting();
      },
    });
  });
  let controlled = navigator.serviceWorker.controller !== null;
  worker.addEventListener('controlling', () => {
    if (told) location.reload();
    else if (controlled) onWaiting({ takeOver: () => location.reload() });
    controlled = true;
  });
  const look = () => {
    // Registering anew, for a first version that could not be kept whole leaves no registration to update.
    if (document.visibilityState === 'visible') void navigator.serviceWorker.register(address).then(tend, () => {});
  };
  await worker.register().catch(() => undefined);
  document.addEventListener('visibilitychange', look);
  addEventListener('online', look);
  tend();
}

/** The first screen comes first: what follows it waits until the page has nothing better to do. Not every browser tells. */
const quiet = (): Promise<unknown> =>
  new Promise((done) => {
    if ('requestIdleCallback' in window) requestIdleCallback(done, { timeout: QUIET_LIMIT_MS });
    else setTimeout(done, QUIET_GUESS_MS);
  });

/** Once the first screen is there, or late enough all the same: until then the line is the screen's alone. */
const shown = (): Promise<void> =>
  new Promise((done) => {
    const isShown = () => document.querySelector('main:not([aria-busy])') !== null;
    const end = () => {
      watch.disconnect();
      done();
    };
    const watch = new MutationObserver(() => isShown() && end());
    if (isShown()) return done();
    watch.observe(document.body, { childList: true, subtree: true });
    setTimeout(end, QUIET_LIMIT_MS);
  });

/** Has the version in force look after the files it keeps, once there is one, and those that the language needs. */
function tend(): void {
  const language = document.documentElement.lang;
  void navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ type: 'TEND', language }));
}

const answers = (worker: ServiceWorker, type: string): Promise<boolean> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => done(data === true);
    setTimeout(() => done(false), ANSWER_LIMIT_MS);
    worker.postMessage({ type }, [port2]);
  });
