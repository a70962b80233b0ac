import type { BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { claims } from '../photos/claims';
import { openBareSite } from './bare-site';
import type { Site } from './browser';
import { keepReading, keepToy, lengths, openTab, state } from './store-tab';

let site: Site;
let context: BrowserContext;
beforeAll(async () => {
  site = await openBareSite();
});
afterAll(() => site.close());
beforeEach(async () => {
  context = await site.browser.newContext();
});
afterEach(() => context.close());

describe('a store that fails', () => {
  test('because it is full hands the value back, and keeps what still fits', async () => {
    await setRoom(1_000_000);
    const page = await openTab(context, site.address);
    await state(page);
    const toyId = await keepToy(page);
    const photo = await page.evaluate(
      async ([toyId, head]) => {
        const rest = Uint8Array.from({ length: 1_500_000 }, (_, at) => at % 251);
        const photo = new Blob([Uint8Array.from(head), rest], { type: 'image/jpeg' });
        return window.rooms.storage.savePhoto(toyId, photo).then(
          () => 'saved',
          ({ code, unsaved }) => ({ code, kept: unsaved instanceof Blob }),
        );
      },
      [toyId, [...claims.jpeg.of(640, 640)]] as const,
    );
    expect(photo).toEqual({ code: 'store-full', kept: true });
    expect(await keepReading(page, toyId)).toBe('saved');
  });

  test('because it is full to the brim, says so from the start', async () => {
    await setRoom(1);
    const page = await openTab(context, site.address);
    expect(await state(page)).toEqual({ ok: false, code: 'store-full' });
    expect(await keepReading(page, 'any', 305)).toMatchObject({ mm: 305 });
  });

  test('because there is none, says so', async () => {
    const page = await openTab(context, site.address, () => {
      Object.defineProperty(window, 'indexedDB', { value: undefined });
    });
    expect(await state(page)).toEqual({ ok: false, code: 'store-missing' });
    expect(await keepReading(page, 'any')).toEqual({ code: 'store-missing', mm: 300 });
  });

  test('because it may not be used, says so', async () => {
    const page = await openTab(context, site.address, () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('denied', 'SecurityError');
      };
      for (const name of ['localStorage', 'sessionStorage'])
        Object.defineProperty(window, name, {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        });
    });
    expect(await state(page)).toEqual({ ok: false, code: 'store-missing' });
  });

  test('because the browser never answers, says so in time', async () => {
    const page = await openTab(context, site.address, () => {
      IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
    });
    expect(await state(page)).toEqual({ ok: false, code: 'store-slow' });
  });

  test('because the connection was lost, opens it again by itself', async () => {
    const page = await openTab(context, site.address, () => {
      const opened: IDBDatabase[] = [];
      Object.assign(window, { opened });
      const begin = IDBDatabase.prototype.transaction;
      IDBDatabase.prototype.transaction = function (...how) {
        if (!opened.includes(this)) opened.push(this);
        return begin.apply(this, how);
      };
    });
    await state(page);
    const toyId = await keepToy(page);
    await page.evaluate(() => {
      for (const database of (window as unknown as { opened: IDBDatabase[] }).opened) database.close();
    });
    expect(await keepReading(page, toyId)).toBe('saved');
    expect(await lengths(page, toyId)).toEqual([300]);
  });
});

describe('a store cleared by the browser', () => {
  test('is told from a new one and from one as it was left', async () => {
    const page = await openTab(context, site.address);
    expect(await state(page)).toEqual({ ok: true, found: 'new' });
    await page.reload();
    expect(await state(page)).toEqual({ ok: true, found: 'known' });
    const devtools = await context.newCDPSession(page);
    await devtools.send('Storage.clearDataForOrigin', {
      origin: new URL(site.address).origin,
      storageTypes: 'indexeddb',
    });
    await page.reload();
    expect(await state(page)).toEqual({ ok: true, found: 'cleared', lastSeen: expect.any(Number) });
    await page.reload();
    expect(await state(page)).toEqual({ ok: true, found: 'known' });
  });
});

/** Leaves the app this much room, in bytes. Chromium heeds it only before the store is first opened. */
async function setRoom(quotaSize: number): Promise<void> {
  const devtools = await context.newCDPSession(await context.newPage());
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(site.address).origin, quotaSize });
}
