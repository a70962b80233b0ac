import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { desktop, openSite, phone, type Site, untilKept } from './browser';

let site: Site;
beforeAll(async () => {
  site = await openSite({ under: '/any/shop/' });
});
afterAll(() => site.close());

describe('the first page, below any path', () => {
  test.each([
    ['phone', phone],
    ['desktop', desktop],
  ])('opens on a %s with nothing wrong and nothing asked of others', async (_, options) => {
    const { page, wrong, close } = await site.visit(options);
    await page.goto(site.address);
    await expect.poll(() => page.locator('main').textContent()).not.toBe('');
    expect(wrong).toEqual([]);
    await close();
  });

  test('has a manifest whose icons are there', async () => {
    const { page, close } = await site.visit();
    await page.goto(site.address);
    const href = await page.locator('link[rel=manifest]').getAttribute('href');
    const address = new URL(href ?? '', site.address);
    const manifest = (await (await fetch(address)).json()) as { icons: { src: string }[] };
    for (const { src } of manifest.icons) expect((await fetch(new URL(src, address))).status).toBe(200);
    await close();
  });

  test('opens without a network, its deeper addresses too', async () => {
    const { page, wrong, close } = await site.visit();
    await page.goto(site.address);
    await untilKept(page);
    await site.stop();
    await page.reload();
    await expect.poll(() => page.locator('main').textContent()).not.toBe('');
    await page.goto(`${site.address}deeper/still`);
    expect(new URL(page.url()).pathname).toBe(new URL(site.address).pathname);
    expect(wrong).toEqual([]);
    await site.restart();
    await close();
  });

  test('keeps the letters of a language once it is chosen, and prints with them without a network', async () => {
    const { page, close } = await site.visit();
    await page.goto(site.address);
    await untilKept(page);
    const kept = () =>
      page.evaluate(async () => {
        const caches = await window.caches.keys();
        const all = await Promise.all(caches.map(async (name) => (await window.caches.open(name)).keys()));
        return all.flat().flatMap(({ url }) => /[^?]*face-(arabic|latin|japanese)-[^?]*/.exec(url)?.[0] ?? []);
      });
    const nameOf = (address: string) => /face-(\w+)-/.exec(address)?.[1];
    expect((await kept()).map(nameOf).sort()).toEqual(['arabic', 'latin']);
    await page.evaluate(() => {
      document.documentElement.lang = 'ja';
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await expect.poll(async () => (await kept()).map(nameOf).sort()).toEqual(['arabic', 'japanese', 'latin']);
    await site.stop();
    const face = (await kept()).find((address) => nameOf(address) === 'japanese') ?? '';
    expect(await page.evaluate(async (address) => (await fetch(address)).ok, face)).toBe(true);
    await site.restart();
    await close();
  });

  test('refuses inline code', async () => {
    const { page, wrong, close } = await site.visit();
    await page.goto(site.address);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      try {
        script.textContent = 'document.title = "ran"';
        document.head.append(script);
      } catch {
        return false;
      }
      return document.title === 'ran';
    });
    expect(ran).toBe(false);
    expect(wrong.length).toBeGreaterThan(0);
    await close();
  });
});
