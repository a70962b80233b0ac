/** A host that compresses, as hosts do, and counts what leaves it; and the moment a screen can be used. */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { DIST, phone } from './browser';

/** What any static host compresses, and the types that modules and styles must have. */
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/**
 * What a phone of that language waits for before the first screen can be used: bytes of each file, headers included, and of everything
 * the page goes on to fetch. Without the service worker, which fetches the rest once the screen is there.
 */
export async function weigh(
  browser: Browser,
  locale = 'en',
): Promise<{ before: readonly (readonly [string, number])[]; all: number }> {
  const host = await openHost();
  const context = await browser.newContext({ ...phone, locale, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript(noteWhenUsable);
  await page.goto(host.address);
  await usable(page);
  await page.waitForLoadState('networkidle');
  // What the app goes on to fetch may begin while the page is asked: it is neither early nor known to be late.
  const sent = new Map(host.sent);
  const late = await page.evaluate(() => {
    const { usableAt } = window as unknown as { usableAt: number };
    return performance
      .getEntriesByType('resource')
      .flatMap(({ name, startTime }) => (startTime > usableAt ? [name] : []));
  });
  await context.close();
  await host.close();
  const before = [...sent].filter(([name]) => !late.includes(host.address + name));
  return { before, all: [...host.sent.values()].reduce((sum, each) => sum + each, 0) };
}

/** When the screen could be used, ms after the address was opened. */
export async function usable(page: Page): Promise<number> {
  await page.waitForFunction(() => 'usableAt' in window);
  return page.evaluate(() => (window as unknown as { usableAt: number }).usableAt);
}

/** Usable: the main act of the screen is there to be pressed. Whatever was asked for before that moment counts. */
export function noteWhenUsable(): void {
  const watch = new MutationObserver(() => {
    if (!document.querySelector('#app .go')) return;
    Object.assign(window, { usableAt: performance.now() });
    watch.disconnect();
  });
  watch.observe(document, { childList: true, subtree: true });
}

/** Serves dist/ compressed, as a host does, and counts the bytes of each answer as they leave, headers and all. */
async function openHost() {
  const sent = new Map<string, number>();
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? '/', 'http://localhost').pathname.slice(1);
    const file = contentOf(name || 'index.html');
    const type = TYPES[extname(name || 'index.html')];
    const body = file && type ? brotliCompressSync(file) : file;
    const start = request.socket.bytesWritten;
    response.once('finish', () => sent.set(name, request.socket.bytesWritten - start));
    if (!body) response.writeHead(404).end();
    else response.writeHead(200, type ? { 'content-type': type, 'content-encoding': 'br' } : {}).end(body);
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  const place = server.address();
  return {
    sent,
    address: `http://localhost:${typeof place === 'object' ? place?.port : ''}/`,
    close: () => new Promise((done) => server.close(done).closeAllConnections()),
  };
}

function contentOf(name: string): Buffer | undefined {
  try {
    return readFileSync(join(DIST, name));
  } catch {
    return undefined;
  }
}
