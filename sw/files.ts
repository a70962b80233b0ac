/**
 * The files of this build and what each must be: its SHA-256 (FIPS 180-4) is known since the build, and no other bytes
 * are ever kept. Whatever a network says in its place (a log-in page, half a file, nothing) is refused and asked for again.
 */
declare const self: ServiceWorkerGlobalScope;
/** Address below the app's own, and SHA-256 in base64; put in by the build. */
declare const KEPT_FILES: Readonly<Record<string, string>>;
/** Those of them that are kept only once they are asked for, or with the language that needs them. */
declare const WHEN_ASKED: Readonly<Record<string, string>>;

/** One file as this build wants it. `key` is where it is kept: a name for its content, so builds never overwrite each other. */
export type Kept = {
  readonly url: string;
  readonly hash: string;
  readonly key: string;
  readonly language: string | undefined;
};

/** A cache of our own: other apps may live at the same origin. */
export const CACHE = `hemling-files ${self.registration.scope}`;

/** As many are fetched side by side: a slow line stays busy, a small device is not flooded. */
const AT_ONCE = 4;
/** The browser's own cache may hold the wrong answer, so the second try goes past it. */
const TRIES: readonly RequestCache[] = ['default', 'reload'];

const files = new Map(
  Object.entries(KEPT_FILES).map(([name, hash]): [string, Kept] => {
    const url = new URL(name, self.registration.scope).href;
    const key = `${url}?sha256=${encodeURIComponent(hash)}`;
    return [url, { url, hash, key, language: WHEN_ASKED[name] }];
  }),
);

/** The file at an address, if it is one of this build's. */
export const fileAt = (url: string): Kept | undefined => files.get(url.replace(/[?#].*$/, ''));

export const keys = (): ReadonlySet<string> => new Set([...files.values()].map(({ key }) => key));

/** The kept file; fetched, and kept from then on, where it is missing. Throws where neither is to be had. */
export async function answerWith(file: Kept): Promise<Response> {
  const cache = await caches.open(CACHE);
  return (await cache.match(file.key)) ?? (await keep(cache, file));
}

type How = { readonly bytes: boolean; readonly language?: string };

/**
 * Sees that every file is kept and is what it must be, and fetches those that are not; one that few need only where it is
 * kept already, or its `language` is spoken. Throws when one cannot be had; those that could are kept all the same. `bytes: false` only sees that each is there.
 */
export async function keepAll({ bytes, language }: How): Promise<void> {
  const cache = await caches.open(CACHE);
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const rest = files.values();
  const failures: unknown[] = [];
  const work = async () => {
    for (const file of rest) {
      const isThere = there.has(file.key);
      const isWanted = file.language === undefined || file.language === language;
      if (isThere ? !bytes || (await isSound(cache, file)) : !isWanted) continue;
      await keep(cache, file).catch((error) => failures.push(error));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  if (failures.length > 0) throw failures[0];
}

async function keep(cache: Cache, file: Kept): Promise<Response> {
  for (const how of TRIES) {
    const answer = await fetch(file.url, { cache: how, credentials: 'same-origin' }).catch(() => null);
    const bytes = answer?.ok ? await answer.arrayBuffer().catch(() => null) : null;
    if (!answer || !bytes || (await hashOf(bytes)) !== file.hash) continue;
    const clean = new Response(bytes, { headers: headersOf(answer) });
    await cache.put(file.key, clean.clone());
    return clean;
  }
  throw new TypeError(`not as built: ${file.url}`);
}

async function isSound(cache: Cache, { key, hash }: Kept): Promise<boolean> {
  const found = await cache.match(key);
  return found !== undefined && (await hashOf(await found.arrayBuffer())) === hash;
}

/** The bytes are unpacked already, and a redirect may not be answered to a navigation: a response of our own with what else was said. */
function headersOf({ headers }: Response): Headers {
  const kept = new Headers(headers);
  for (const name of ['content-encoding', 'content-length', 'transfer-encoding']) kept.delete(name);
  return kept;
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return btoa(String.fromCharCode(...sum));
}
