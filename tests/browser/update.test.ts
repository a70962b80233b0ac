import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { beginToy } from './begin-toy';
import { DIST, openSite, type Site, untilKept, untilStill, type Visit } from './browser';
import { Maker } from './maker';
import { makeNewer } from './newer-build';

let folder: string;
let site: Site;
let visit: Visit;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hemling-update-'));
  cpSync(DIST, folder, { recursive: true });
  site = await openSite({ folder });
  visit = await site.visit();
});
afterEach(async () => {
  await visit.close();
  await site.close();
  rmSync(folder, { recursive: true });
});

const offer = (page: Page) => page.getByRole('button', { name: 'Use it now' });
const version = (page: Page) => page.evaluate(() => document.documentElement.dataset.version ?? 'older');

/** Publishes a newer build and waits until the service worker of it waits. */
async function publish(page: Page): Promise<void> {
  makeNewer(folder);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting);
}

test('a newer version that comes in the middle of a step waits, and goes on at the same step; then all works offline', async () => {
  const { page } = visit;
  const maker = new Maker(page, site.address);
  await maker.open();
  await untilKept(page);
  await beginToy(maker);
  await maker.type('305 mm');
  await publish(page);
  await maker.type('306 mm');
  expect(await offer(page).isVisible()).toBe(false);
  const step = page.url();
  await maker.next();
  expect(await offer(page).isVisible()).toBe(false);
  expect(await version(page)).toBe('older');

  await maker.toys();
  await page.bringToFront();
  await untilStill(page);
  await Promise.all([page.waitForEvent('load'), offer(page).click()]);
  await page.getByRole('link', { name: /^Go on with/ }).click();
  await maker.field().waitFor();
  expect(await version(page)).toBe('newer');
  await maker.at(new URL(step).hash.slice(2));
  await expect.poll(() => maker.field().inputValue()).toMatch(/^12/);

  await site.stop();
  await page.reload();
  const [, toy, garment] = /#\/toy\/(\w+)\/(\w+)/.exec(step) ?? [];
  for (const path of everyScreen(`toy/${toy}`, `toy/${toy}/${garment}`)) {
    await maker.at(path);
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    expect(await page.getByRole('button', { name: 'Reload' }).count(), path).toBe(0);
  }
  expect(visit.wrong).toEqual([]);
  await site.restart();
});

test('a second tab is asked before it changes over, and never while a number is being entered', async () => {
  const { page } = visit;
  const maker = new Maker(page, site.address);
  await maker.open();
  await untilKept(page);
  await beginToy(maker);
  const other = await page.context().newPage();
  await other.goto(site.address);
  await publish(page);
  await Promise.all([other.waitForEvent('load'), offer(other).click()]);
  await expect.poll(() => version(other)).toBe('newer');

  await maker.type('306 mm');
  await page.locator('#step-status .saved').waitFor();
  expect(await version(page)).toBe('older');
  expect(await offer(page).isVisible()).toBe(false);
  await maker.toys();
  await page.bringToFront();
  await untilStill(page);
  await Promise.all([page.waitForEvent('load'), offer(page).click()]);
  expect(await version(page)).toBe('newer');
  expect(visit.wrong).toEqual([]);
});

test('files of a build two builds ago are gone, those of the one before stay', async () => {
  const { page } = visit;
  await page.goto(site.address);
  await untilKept(page);
  const kept = () =>
    page.evaluate(async () => {
      const caches = await Promise.all((await window.caches.keys()).map((name) => window.caches.open(name)));
      const all = (await Promise.all(caches.map((cache) => cache.keys()))).flat();
      return all.map(({ url }) => /assets\/.*?((?:-next)*)\.\w+\?/.exec(url)?.[1]).filter((mark) => mark !== undefined);
    });
  const builds = async () => [...new Set(await kept())].sort();
  expect(await builds()).toEqual(['']);
  for (let updates = 1; updates <= 3; updates++) {
    await publish(page);
    await Promise.all([page.waitForEvent('load'), offer(page).click()]);
    await expect.poll(builds).toEqual([updates - 1, updates].map((times) => '-next'.repeat(times)));
  }
});

const everyScreen = (toy: string, garment: string) => [
  '',
  'new',
  toy,
  `${toy}/kind`,
  `${toy}/looks`,
  `${toy}/make`,
  `${garment}/choices`,
  `${garment}/marks`,
  `${garment}/measure/neck-girth`,
  `${garment}/review`,
  `${garment}/pattern`,
  `${garment}/print`,
  'settings',
  'settings/backup',
  'settings/about',
];
