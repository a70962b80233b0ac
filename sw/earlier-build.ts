/**
 * The files of the build before this one stay for one build more: a tab that was opened with it may still ask for a
 * part it has not loaded yet, and no host may have it any more.
 */
import { CACHE, keys } from './files';

declare const self: ServiceWorkerGlobalScope;

/** Files named after their content: a name means the same bytes in every build. */
export const isAsset = (url: string): boolean => url.startsWith(new URL('assets/', self.registration.scope).href);

export const fromEarlierBuild = async (request: Request): Promise<Response> =>
  (await (await caches.open(CACHE)).match(request.url, { ignoreSearch: true })) ?? fetch(request);

/** Deletes what neither this build nor the one before it wants, and notes what the next clean-up may delete. */
export async function cleanUp(): Promise<void> {
  const cache = await caches.open(CACHE);
  const wanted = keys();
  const note = new URL('earlier-build', self.registration.scope).href;
  const earlier: unknown = await (await cache.match(note))?.json();
  const leftLastTime = new Set(Array.isArray(earlier) ? earlier : []);
  const unwanted = (await cache.keys()).map(({ url }) => url).filter((url) => url !== note && !wanted.has(url));
  await Promise.all(unwanted.filter((url) => leftLastTime.has(url)).map((url) => cache.delete(url)));
  await cache.put(note, Response.json(unwanted.filter((url) => !leftLastTime.has(url))));
}
