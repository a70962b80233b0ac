import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Instead } from '../../.config/serve.mjs';
import { openSite, phone, type Site, untilKept } from './browser';
import { Maker } from './maker';

let instead: Instead = () => undefined;
let site: Site;
beforeAll(async () => {
  site = await openSite({ instead: (...asked) => instead(...asked) });
});
afterAll(() => site.close());

/** The one file of the first page is not what it was, on the way to the page itself too. */
const brokenApp: Instead = (path) => (/^assets\/index-.*\.js$/.test(path) ? 'throw new Error("broken")' : undefined);
const stands = (page: Page) => page.getByRole('heading', { name: 'Hemling has not started' }).waitFor();

test('an app that does not start says so, lies on no side, and its toys can be saved as a file that Settings brings back', async () => {
  instead = () => undefined;
  const { page, close } = await site.visit({ ...phone, serviceWorkers: 'block' });
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await page.evaluate(() => localStorage.setItem('hemling-typed', '17½'));
  const broken = { contentType: 'text/javascript', body: 'throw new Error("broken")' };
  await page.route(/assets\/index-.*\.js$/, (route) => route.fulfill(broken));
  await page.goto('about:blank');
  await page.goto(`${site.address}#/toy/strange`);
  await stands(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme });
    if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/watchdog-${scheme}.png` });
  }
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything as a file' }).click(),
  ]);
  await page.getByText('The file is in your downloads').waitFor();
  const file = readFileSync(await download.path());
  const saved = JSON.parse(file.toString());
  expect(saved.readings.length).toBeGreaterThan(10);
  expect(saved.beside).toMatchObject({ 'hemling-typed': '17½' });

  await page.unroute(/assets\/index-.*\.js$/);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('heading', { name: 'Your toys' }).waitFor();
  expect(new URL(page.url()).hash).toBe('');
  await close();

  const other = await site.visit();
  const elsewhere = new Maker(other.page, site.address);
  await elsewhere.at('settings/backup');
  const choose = () =>
    other.page
      .locator('input[type=file]')
      .setInputFiles({ name: 'hemling.json', mimeType: 'application/json', buffer: file });
  await choose();
  await other.page.getByRole('button', { name: 'Add it to what is here' }).waitFor();
  expect(await elsewhere.named('Replace what is here').count(), 'nothing is here that it could replace').toBe(0);
  await elsewhere.press('Add it to what is here');
  await other.page.getByText('Everything from the file is here').waitFor();
  await choose();
  await other.page.getByText('All its toys and numbers are here already').waitFor();
  await elsewhere.at('');
  await other.page
    .getByRole('link', { name: /Bramble/ })
    .first()
    .waitFor();
  await other.close();
});

test('its files can be fetched anew, only where the host answers, and nothing kept is touched', async () => {
  instead = () => undefined;
  const { page, close } = await site.visit();
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await untilKept(page);
  await page.evaluate(async () => {
    await caches.open('of another app');
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const { url } of await cache.keys())
        if (/assets\/index-.*js/.test(url))
          await cache.put(url, new Response('throw 1', { headers: { 'content-type': 'text/javascript' } }));
    }
  });
  await site.stop();
  await page.goto('about:blank');
  await page.goto(site.address);
  await stands(page);
  await page.getByRole('button', { name: 'Fetch Hemling anew' }).click();
  await page.getByText('nothing was cleared').waitFor();
  await site.restart();
  await page.getByRole('button', { name: 'Fetch Hemling anew' }).click();
  await page.getByRole('heading', { name: 'Your toys' }).waitFor();
  expect(await page.evaluate(() => caches.keys())).toContain('of another app');
  await close();
});

test('a browser where nothing was kept is told so, and no store is made', async () => {
  instead = brokenApp;
  const { page, close } = await site.visit();
  await page.goto(site.address);
  await stands(page);
  await page.getByRole('button', { name: 'Save everything as a file' }).click();
  await page.getByText('nothing to save').waitFor();
  expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  await close();
});

test('an app that starts, however slowly, is left alone', async () => {
  instead = () => undefined;
  const { page, wrong, close } = await site.visit();
  await page.goto(site.address);
  await page.locator('#app a.go').first().waitFor();
  await page.evaluate(() => {
    dispatchEvent(new ErrorEvent('error', { message: 'of some extension' }));
  });
  await page.waitForFunction(() => performance.now() > 4000);
  expect(await page.locator('main.watchdog').count()).toBe(0);
  expect(wrong).toEqual([]);
  await close();
});
