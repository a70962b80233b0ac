import { useEffect, useState } from 'preact/hooks';

/** A screen's address: the parts of `#/…` and what follows a `?`. Addresses that are not ours (a card) give no parts. */
export type Route = {
  readonly parts: readonly string[];
  readonly query: URLSearchParams;
};

/** Reads an address' fragment. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  const parts = path
    .split('/')
    .filter((part) => part !== '')
    .map(decode);
  return { parts, query: new URLSearchParams(query) };
}

/** The address of a screen, to be put in a link. */
export function to(...parts: readonly string[]): string {
  return `#/${parts.map(encodeURIComponent).join('/')}`;
}

/** Goes to a screen. `replace` leaves no way back to the present one (a step just finished). */
export function go(address: string, how: 'push' | 'replace' = 'push'): void {
  if (how === 'push') location.hash = address;
  else location.replace(address);
}

/** The address shown, kept up to date. */
export function useRoute(): Route {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const follow = () => setHash(location.hash);
    addEventListener('hashchange', follow);
    // The address may have changed since it was first read, while nobody listened yet.
    follow();
    return () => removeEventListener('hashchange', follow);
  }, []);
  return readRoute(hash);
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
