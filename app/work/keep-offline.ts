import { trustedAddress } from './trusted-address';

/** What the page needs of a version that waits: to hear of it, and to let it take over at a good moment. */
export type Waiting = { takeOver: () => void };

/**
 * Starts the service worker, so that the app opens without a network from now on. It never takes over by itself:
 * `onWaiting` hears of each newer version, and the page reloads once one has been told to take over. A tab that another
 * tab brought the newer version upon is asked to reload in the same way. Newer versions are looked for at the start and
 * whenever the maker comes back to the app.
 */
export async function keepOffline(onWaiting: (waiting: Waiting) => void): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const { Workbox } = await import('workbox-window');
  const worker = new Workbox(trustedAddress('./sw.js'));
  let told = false;
  worker.addEventListener('waiting', () =>
    onWaiting({
      takeOver: () => {
        told = true;
        worker.messageSkipWaiting();
      },
    }),
  );
  let controlled = navigator.serviceWorker.controller !== null;
  worker.addEventListener('controlling', () => {
    if (told) location.reload();
    else if (controlled) onWaiting({ takeOver: () => location.reload() });
    controlled = true;
  });
  await worker.register();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') worker.update().catch(() => undefined);
  });
}
