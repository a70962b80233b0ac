import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DIST, openSite, type Site, untilKept } from './browser';

const folder = mkdtempSync(join(tmpdir(), 'hemling-update-'));
let site: Site;
beforeAll(async () => {
  cpSync(DIST, folder, { recursive: true });
  site = await openSite({ folder });
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

test('a newer version waits until the page lets it take over', async () => {
  const { page, close } = await site.visit();
  await page.goto(site.address);
  await untilKept(page);
  publishNewer();
  await untilWaiting(page);
  await page.reload();
  expect(await versionOf(page)).toBe('older');

  await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting?.postMessage({ type: 'SKIP_WAITING' }));
  const reloaded = () => versionOf(page).catch(() => 'between two pages');
  await expect.poll(reloaded, { timeout: 10_000 }).toBe('newer');
  await close();
});

/** Puts a mark in the page and, as a build would, its new revision in the service worker. */
function publishNewer(): void {
  const change = (name: string, from: string | RegExp, to: string) => {
    const file = join(folder, name);
    writeFileSync(file, readFileSync(file, 'utf8').replace(from, to));
  };
  change('index.html', '<html', '<html data-version="newer"');
  change('sw.js', /(url:[`"']index\.html[`"'],revision:[`"'])\w+/, '$1newer');
}

async function untilWaiting(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null), { timeout: 10_000 })
    .toBe(true);
}

const versionOf = (page: Page) => page.evaluate(() => document.documentElement.dataset.version ?? 'older');
