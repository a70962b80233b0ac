import { Workbox } from 'workbox-window';
import { trustedAddress } from './trusted-address';

/** What the page needs of a version that waits: to hear of it, and to let it take over at a good moment. */
export type Waiting = { takeOver: () => void };

/**
 * Starts the service worker, so that the app opens without a network from now on. It never takes over by itself:
 * `onWaiting` hears of each newer version, and the page reloads once one has been told to take over.
 */
export async function keepOffline(onWaiting: (waiting: Waiting) => void): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const worker = new Workbox(trustedAddress('./sw.js'));
  worker.addEventListener('waiting', () => {
    worker.addEventListener('controlling', () => location.reload());
    onWaiting({ takeOver: () => worker.messageSkipWaiting() });
  });
  await worker.register();
}
