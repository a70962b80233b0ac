/**
 * The first page: puts the app on the screen, then sees that it opens without a network next time. Nothing that drafts
 * or prints may be imported from here, however indirectly: it waits for a dynamic import or the worker.
 */
import { offerUpdate, start } from './screens';
import { keepOffline } from './work/keep-offline';

const place = document.getElementById('app');
// Not awaited at the top level: what start() fetches may share a file with this module, and would wait for it for ever.
void (async () => {
  try {
    if (place) await start(place);
  } finally {
    // Also after a start that failed: the version that mends it comes this way.
    if (import.meta.env.PROD) await keepOffline(offerUpdate);
  }
})();
