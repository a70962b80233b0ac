/**
 * The watchdog: a script of its own beside the bundle, which notices that the app did not start and then offers what
 * helps: try again, fetch the app's files anew, save everything as a file. It needs nothing of the app, since the app
 * may be what is broken; it reads the store by itself and never writes to it. No other screen ever lives here.
 */
import { type Offer, showOffer } from './offer';

/** After a failure the app has so long to show something all the same, ms. */
const AFTER_FAILURE_MS = 2_000;
/** After everything was fetched; the store alone may take eight seconds before the app says that it is slow. */
const AFTER_LOADING_MS = 10_000;
/** However slow the line: by then something may be said. */
const AT_ALL_MS = 40_000;

let offer: Offer | undefined;

/** Anything to read or to press means that the app can speak for itself. */
const hasStarted = () => document.querySelector('#app :is(h1, a, button)') !== null;

function look(): void {
  if (hasStarted()) offer?.takeAway();
  else offer ??= showOffer();
  if (hasStarted()) offer = undefined;
}

const lookAfter = (wait: number) => setTimeout(look, wait);

addEventListener('error', () => lookAfter(AFTER_FAILURE_MS), true);
addEventListener('unhandledrejection', () => lookAfter(AFTER_FAILURE_MS));
if (document.readyState === 'complete') lookAfter(AFTER_LOADING_MS);
else addEventListener('load', () => lookAfter(AFTER_LOADING_MS));
lookAfter(AT_ALL_MS);
new MutationObserver(() => {
  if (offer) look();
}).observe(document.documentElement, { childList: true, subtree: true });
