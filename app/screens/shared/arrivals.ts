import { useEffect, useState } from 'preact/hooks';
import { to } from './route';

/** Something that may hold a card: a link, a card's text, a file or a picture. Nothing is believed of it yet. */
export type Arrival = string | Blob;

let waiting: readonly Arrival[] = [];
const listeners = new Set<() => void>();

/** Puts what came in where the card screen looks, and shows that screen. What came before is forgotten. */
export function bring(things: readonly Arrival[]): void {
  waiting = things;
  location.hash = to('card');
  for (const tell of listeners) tell();
}

export const forgetArrivals = (): void => {
  waiting = [];
};

/** What waits to be looked at, kept up to date. */
export function useArrivals(): readonly Arrival[] {
  const [arrivals, setArrivals] = useState(waiting);
  useEffect(() => {
    const follow = () => setArrivals(waiting);
    listeners.add(follow);
    // Something may have come in since it was first looked, while nobody listened yet.
    follow();
    return () => void listeners.delete(follow);
  }, []);
  return arrivals;
}

/**
 * Listens for cards that come from outside: in the address (cleared from it, and from the browser's history, at once),
 * dropped or pasted anywhere but in a field, or opened with the app. Part of the first page, so it only takes in.
 */
export function listenForArrivals(): void {
  takeFromAddress();
  addEventListener('hashchange', takeFromAddress);
  addEventListener('dragover', (event) => event.preventDefault());
  addEventListener('drop', (event) => {
    event.preventDefault();
    bringFrom(event.dataTransfer);
  });
  addEventListener('paste', (event) => {
    const field = event.target instanceof Element && event.target.closest('input, textarea, [contenteditable]');
    if (!field) bringFrom(event.clipboardData);
  });
  if ('launchQueue' in window) {
    (window.launchQueue as LaunchQueue).setConsumer(async ({ files }) => {
      if (files.length > 0) bring(await Promise.all(files.map((file) => file.getFile())));
    });
  }
}

/** `#1…` is a card, of this or a later version; `#/…` a screen. */
function takeFromAddress(): void {
  if (!/^#\d/.test(location.hash)) return;
  const link = location.hash;
  history.replaceState(null, '', to('card'));
  bring([link]);
}

function bringFrom(carrier: DataTransfer | null): void {
  const files = [...(carrier?.files ?? [])];
  const text = carrier?.getData('text/plain') ?? '';
  if (files.length > 0) bring(files);
  else if (/#\d/.test(text) || text.includes('hemling-card')) bring([text]);
}

/** Files opened with an installed app (File Handling API); not in TypeScript's library yet. */
type LaunchQueue = {
  setConsumer(consumer: (launch: { files: readonly { getFile(): Promise<File> }[] }) => void): void;
};
