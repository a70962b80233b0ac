import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Instead } from '../../.config/serve.mjs';
import { DIST, openSite, type Site, untilKept, type Visit } from './browser';
import { Maker } from './maker';
import { makeNewer } from './newer-build';

/** What a log-in page, a line that breaks and a host that is ill answer with 200 in a file's place. */
const wrongs: Readonly<Record<string, (content: Buffer) => Buffer | string>> = {
  'a page of the network’s own': () => '<!doctype html><title>Log in</title><h1>Welcome to the café</h1>',
  'half a file': (content) => content.subarray(0, content.length >> 1),
  'an empty file': () => '',
  'a file with one bit turned': (content) => {
    const turned = Buffer.from(content);
    turned[turned.length >> 1] = (turned[turned.length >> 1] ?? 0) ^ 1;
    return turned;
  },
};

/** The service worker's own requests: a page's have a destination (Fetch Metadata). */
const isKeeping = (request: IncomingMessage) => request.headers['sec-fetch-dest'] === 'empty';

let folder: string;
let instead: Instead;
let site: Site;
let visit: Visit;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hemling-poison-'));
  cpSync(process.env.HEMLING_DIST ?? DIST, folder, { recursive: true });
  instead = () => undefined;
  site = await openSite({ folder, instead: (...asked) => instead(...asked) });
  visit = await site.visit();
});
afterEach(async () => {
  await visit.close();
  await site.close();
  rmSync(folder, { recursive: true });
});

/** Each file is answered wrongly the first time the service worker asks for it, one after the other in each of the ways. Gives how many were. */
function onceEach(): () => number {
  const ways = Object.values(wrongs);
  const told = new Set<string>();
  instead = (path, request, content) => {
    if (!isKeeping(request) || path === 'sw.js' || told.has(path)) return undefined;
    const wrong = ways[told.size % ways.length];
    told.add(path);
    return wrong?.(content);
  };
  return () => told.size;
}

const started = (page: Page) => page.locator('#app a.go').first().waitFor({ timeout: 20_000 });
const offer = (page: Page) => page.getByRole('button', { name: 'Use it now' });
const version = (page: Page) => page.evaluate(() => document.documentElement.dataset.version ?? 'older');
const lookForNewer = (page: Page) =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update().catch(() => undefined)));

/** Every screen's parts come from what is kept: a demo toy is borrowed, and a card scanned for, with the host gone. */
async function worksOffline(page: Page): Promise<void> {
  await site.stop();
  await page.goto(site.address);
  await started(page);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.at('card');
  await maker.heading('Bring in a card');
  await site.restart();
}

/** The files of this build that the device has, as `name: length`. */
const keptFiles = (page: Page) =>
  page.evaluate(async () => {
    const all = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
    return (await Promise.all(all.map((cache) => cache.keys()))).flat().length;
  });

describe('a wrong answer while the app is kept', () => {
  test('of four kinds in turn, once for every file: nothing wrong is kept', async () => {
    const { page } = visit;
    const told = onceEach();
    await page.goto(site.address);
    await started(page);
    await untilKept(page);
    await worksOffline(page);
    expect(told()).toBeGreaterThan(80);
    console.log(`${told()} wrong answers`);
  });

  test.each(Object.entries(wrongs).slice(0, 2))(
    '%s, again and again: the build before goes on meanwhile',
    async (_, wrong) => {
      const { page } = visit;
      await page.goto(site.address);
      await untilKept(page);
      makeNewer(folder);
      instead = (path, request, content) => (isKeeping(request) && path !== 'sw.js' ? wrong(content) : undefined);
      await lookForNewer(page);
      await page.reload();
      await started(page);
      expect(await version(page)).toBe('older');
      await worksOffline(page);
      expect(await version(page)).toBe('older');
      expect(await offer(page).isVisible()).toBe(false);

      instead = () => undefined;
      await page.goto(site.address);
      await started(page);
      await Promise.all([page.waitForEvent('load'), offer(page).click()]);
      await started(page);
      expect(await version(page)).toBe('newer');
      await worksOffline(page);
      expect(await version(page)).toBe('newer');
    },
  );

  test('an empty script for a service worker is not offered, and the next true one mends it', async () => {
    const { page } = visit;
    await page.goto(site.address);
    await untilKept(page);
    instead = (path) => (path === 'sw.js' ? '' : undefined);
    await lookForNewer(page);
    await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting);
    await page.reload();
    await started(page);
    expect(await offer(page).isVisible()).toBe(false);
    await worksOffline(page);
    instead = () => undefined;
    await page.goto(site.address);
    await started(page);
    await lookForNewer(page);
    await worksOffline(page);
  });
});

describe('what is kept', () => {
  test('and cleared is fetched again by itself', async () => {
    const { page } = visit;
    await page.goto(site.address);
    await untilKept(page);
    const before = await keptFiles(page);
    await page.evaluate(async () => Promise.all((await caches.keys()).map((name) => caches.delete(name))));
    expect(await keptFiles(page)).toBe(0);
    await page.reload();
    await started(page);
    await expect.poll(() => keptFiles(page), { timeout: 30_000 }).toBeGreaterThanOrEqual(before - 1);
    await worksOffline(page);
  });

  test('and spoiled on the device stops the app, which a page outside it notices and mends', async () => {
    const { page } = visit;
    await page.goto(site.address);
    await untilKept(page);
    const spoiled = await page.evaluate(async () => {
      let count = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const key of await cache.keys()) {
          if (!/assets.*\.js/.test(key.url)) continue;
          await cache.put(key, new Response('<h1>Log in</h1>', { headers: { 'content-type': 'text/javascript' } }));
          count++;
        }
      }
      return count;
    });
    expect(spoiled).toBeGreaterThan(50);
    await page.reload();
    await page.getByRole('button', { name: 'Try again' }).click();
    await started(page);
    await worksOffline(page);
  });
});
