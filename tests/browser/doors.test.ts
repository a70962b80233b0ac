import { createServer } from 'node:http';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { hugeClaims as huge } from '../photos/claims';
import small from '../photos/small-pictures.json';
import { openSite, phone, type Site, untilKept, untilStill } from './browser';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

/** In the page: counts what is handed to the browser to be unpacked. */
function countUnpacking(): void {
  const counted = Object.assign(window, { unpacked: 0 });
  const unpack = window.createImageBitmap;
  window.createImageBitmap = ((...given: Parameters<typeof unpack>) => {
    counted.unpacked++;
    return unpack(...given);
  }) as typeof unpack;
}
const unpacked = (page: Page) => page.evaluate(() => (window as unknown as { unpacked: number }).unpacked);

const refused = /larger than a phone can hold|far larger than a card can be/;

test(`${huge.length * 3} pictures of hundreds of millions of pixels at three doors: none is unpacked, each is refused in words`, async () => {
  const { page, wrong, close } = await site.visit({ ...phone, serviceWorkers: 'block' });
  await page.addInitScript(countUnpacking);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  const toy = new URL(page.url()).hash;
  const give = (name: string, mimeType: string, buffer: Buffer) =>
    page.locator('input[type=file]').first().setInputFiles({ name, mimeType, buffer });
  const doors = [toy, '#/card', `${await straightStep(maker, toy)}/photo`];
  let tried = 0;
  for (const door of doors) {
    for (const { name, type, bytes } of huge) {
      await atDoor(page, site.address + door);
      await give(`${name}.picture`, type, Buffer.from(bytes));
      await page.getByText(refused).first().waitFor();
      expect(await unpacked(page), `${name} at ${door}`).toBe(0);
      tried++;
    }
  }
  if (process.env.PICTURES) await page.screenshot({ path: `${process.env.PICTURES}/refused.png` });
  for (const [name, base64] of Object.entries(small)) {
    await atDoor(page, site.address + toy);
    await give(name, `image/${name.replace(/.*\./, '').replace('jpg', 'jpeg')}`, Buffer.from(base64, 'base64'));
    await page.locator('img.toy-photo').first().waitFor();
    await page.getByRole('button', { name: 'Remove the photo' }).click();
    await page.locator('img.toy-photo').first().waitFor({ state: 'detached' });
  }
  console.log(`${tried} refused, ${Object.keys(small).length} opened`);
  expect(wrong).toEqual([]);
  await close();
});

/** To a screen that takes pictures, from another: nothing is left of the picture before. */
async function atDoor(page: Page, address: string): Promise<void> {
  await page.goto(`${site.address}#/settings/about`);
  await page.locator('input[type=file]').first().waitFor({ state: 'detached' });
  const told = page.getByText(refused).first();
  if (await told.isVisible()) await page.getByRole('button', { name: 'Close' }).click();
  await told.waitFor({ state: 'detached' });
  await page.goto(address);
  await page.locator('input[type=file]').first().waitFor({ state: 'attached' });
  // A screen that is still being drawn takes a picture and may forget what it said of it.
  await untilStill(page);
}

/** The address of a step whose measure is straight, so that a photo may tell it. */
async function straightStep(maker: Maker, toy: string): Promise<string> {
  await maker.at(`${toy.slice(2)}/make`);
  await maker.choose(/hooded top/i);
  const [step = ''] = /#\/toy\/\w+\/\w+/.exec(maker.page.url()) ?? [];
  return `${step}/measure/armhole-depth`;
}

/** Everything that lies in the app's databases, and how much room the origin takes. */
const stored = (page: Page) =>
  page.evaluate(async () => {
    const counts: Record<string, number> = {};
    for (const { name = '' } of await indexedDB.databases()) {
      const opening = indexedDB.open(name);
      await new Promise((done) => {
        opening.onsuccess = done;
      });
      for (const table of opening.result.objectStoreNames) {
        const asked = opening.result.transaction(table).objectStore(table).count();
        await new Promise((done) => {
          asked.onsuccess = done;
        });
        counts[`${name}/${table}`] = asked.result;
      }
      opening.result.close();
    }
    return { counts, usage: (await navigator.storage.estimate()).usage ?? 0 };
  });

test('a page of another origin cannot make the app keep anything, or pile anything up', async () => {
  const host = createServer((_, response) => {
    response.writeHead(200, { 'content-type': 'text/html' }).end('<!doctype html><title>Elsewhere</title>');
  });
  await new Promise<void>((done) => host.listen(0, '127.0.0.1', done));
  const place = host.address();
  const elsewhere = `http://127.0.0.1:${typeof place === 'object' ? place?.port : ''}/`;
  const { page, close } = await site.visit({ ...phone, locale: 'en-US' });
  await page.goto(site.address);
  await untilKept(page);
  await page.locator('#app a.go').first().waitFor();
  await page.waitForFunction(async () => (await caches.keys()).length > 0);
  const before = await stored(page);
  const context = page.context();

  const MB = 1024 * 1024;
  for (const bytes of [100, 7 * MB, 7 * MB, 20 * MB, ...Array.from({ length: 9 }, () => 3 * MB)]) {
    const attacker = await context.newPage();
    // The app is kept from looking, so that whatever it takes in piles up.
    await attacker.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
    await attacker.goto(elsewhere);
    await attacker.evaluate(
      ([action, count]) => {
        const form = document.createElement('form');
        Object.assign(form, { method: 'post', action, enctype: 'multipart/form-data' });
        // Hidden, or megabytes of it would be laid out as text.
        const field = document.createElement('input');
        Object.assign(field, { type: 'hidden', name: 'text', value: 'x'.repeat(count) });
        form.append(field);
        document.body.append(form);
        form.submit();
      },
      [`${site.address}share`, bytes] as const,
    );
    await attacker.waitForURL((url) => url.href.startsWith(site.address), { waitUntil: 'commit' });
    const where = new URL(attacker.url()).hash;
    expect(where, `${bytes} bytes`).toMatch(bytes > 8 * MB ? /too-large$/ : /shared|card/);
    await attacker.close();
  }
  const addresses = ['toy/x/y/measure/head-girth', 'toy/x', 'toy/x/y/print', 'settings?locale=__proto__', 'new?name=x'];
  for (const address of addresses) {
    const attacker = await context.newPage();
    await attacker.goto(elsewhere);
    await Promise.all([
      attacker.waitForURL((url) => url.href.startsWith(site.address)),
      attacker.evaluate((to) => location.assign(to), `${site.address}#/${address}`),
    ]);
    await attacker.getByRole('heading', { level: 1 }).first().waitFor();
    await attacker.close();
  }
  const after = await stored(page);
  const { 'hemling-inbox/waiting': waiting = 0, ...kept } = after.counts;
  const { 'hemling-inbox/waiting': _, ...was } = before.counts;
  expect(kept).toEqual(was);
  expect(waiting).toBeGreaterThan(0);
  expect(waiting).toBeLessThanOrEqual(8);
  expect(after.usage - before.usage).toBeLessThan(40 * MB);
  console.log(`18 tries: ${waiting} things wait, ${Math.round((after.usage - before.usage) / MB)} MB more than before`);
  await close();
  await new Promise((done) => host.close(done).closeAllConnections());
});

test('a page of another origin cannot show the app within itself', async () => {
  const { page, close } = await site.visit();
  await page.goto(site.address);
  const shown = await page.evaluate(async (address) => {
    const answer = await fetch(address);
    return [answer.headers.get('content-security-policy'), answer.headers.get('x-frame-options')];
  }, `${site.address}schema/card-1.json`);
  expect(shown[0]).toContain("frame-ancestors 'none'");
  expect(shown[1]).toBe('DENY');
  await close();
});
