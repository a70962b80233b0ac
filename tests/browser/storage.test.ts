import type { BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
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

describe('writing', () => {
  test('is strict, every time', async () => {
    const page = await openTab(context, site.address, () => {
      const begin = IDBDatabase.prototype.transaction;
      const asked: string[] = [];
      Object.assign(window, { asked });
      IDBDatabase.prototype.transaction = function (names, mode, options) {
        const transaction = begin.call(this, names, mode, options);
        if (mode === 'readwrite') asked.push(transaction.durability);
        return transaction;
      };
    });
    await state(page);
    const asked = await page.evaluate(async () => {
      const { storage, fillStore } = window.rooms;
      await fillStore(2, 100);
      const { exportAll, backupFile, readBackup, importAll, undoReplace, forgetCopy } = await storage.loadBackup();
      const result = await readBackup(backupFile(await exportAll()));
      if (!result.ok) throw new Error(result.code);
      await importAll(result.backup, 'merge');
      await importAll(result.backup, 'replace');
      await undoReplace();
      await forgetCopy();
      const [toy] = await storage.listToys();
      const toyId = toy?.id ?? '';
      await storage.addCard(await storage.cardOf(toyId, 'cm'));
      await storage.keepFlag(toyId, 'paw-half', 1);
      await (await storage.removeReading((await storage.historyOf(toyId))[0]?.id ?? ''))();
      await (await storage.removeGarment((await storage.garmentsOf(toyId))[0]?.id ?? ''))();
      await (await storage.removeToy(toyId))();
      await storage.setSetting('unit', 'cm');
      await storage.backedUp();
      return (window as unknown as { asked: string[] }).asked;
    });
    expect(asked.length).toBeGreaterThan(25);
    expect(new Set(asked)).toEqual(new Set(['strict']));
  });

  test('is "saved" only after the transaction is complete', async () => {
    const page = await openTab(context, site.address, () => {
      const begin = IDBDatabase.prototype.transaction;
      const happened: string[] = [];
      Object.assign(window, { happened });
      IDBDatabase.prototype.transaction = function (names, mode, options) {
        const transaction = begin.call(this, names, mode, options);
        if (mode === 'readwrite') transaction.addEventListener('complete', () => happened.push('complete'));
        return transaction;
      };
    });
    await state(page);
    const toyId = await keepToy(page);
    const happened = await page.evaluate(async (toyId) => {
      const { happened } = window as unknown as { happened: string[] };
      happened.length = 0;
      const shown = (count: number) =>
        new Promise<void>((done) => {
          window.addEventListener('shown', ({ detail }: CustomEventInit<number>) => detail === count && done());
        });
      const [none, one] = [shown(0), shown(1)];
      const stop = window.rooms.storage.watchToy(toyId, ({ readings }) => {
        const count = readings['neck-girth']?.length ?? 0;
        happened.push(`shown ${count}`);
        window.dispatchEvent(new CustomEvent('shown', { detail: count }));
      });
      await none;
      await window.rooms.storage.saveReading(toyId, 'neck-girth', 300);
      happened.push('saved');
      await one;
      stop();
      return happened;
    }, toyId);
    expect(happened[0]).toBe('shown 0');
    expect(happened[1]).toBe('complete');
    expect(happened.slice(2).sort()).toEqual(['saved', 'shown 1']);
  });
});

describe('a second tab', () => {
  test('sees at once what the first one keeps, and the other way round', async () => {
    const [first, second] = [await openTab(context, site.address), await openTab(context, site.address)];
    const toyId = await keepToy(first);
    await second.evaluate((toyId) => {
      const seen: number[] = [];
      Object.assign(window, { seen });
      window.rooms.storage.watchToy(toyId, ({ readings }) => seen.push(readings['neck-girth']?.length ?? 0));
    }, toyId);
    await keepReading(first, toyId);
    const seen = () => second.evaluate(() => (window as unknown as { seen: number[] }).seen.at(-1));
    await expect.poll(seen).toBe(1);
    await keepReading(second, toyId, 301);
    expect(await lengths(first, toyId)).toEqual([300, 301]);
  });

  test('of a newer version takes over; the older tab makes way, says so and loses nothing that was typed', async () => {
    const older = await openTab(context, site.address);
    await state(older);
    const toyId = await keepToy(older);
    await older.evaluate(() => {
      window.rooms.storage.onEnded((code) => Object.assign(window, { ended: code }));
    });
    const newer = await context.newPage();
    await newer.goto(`${site.address}index.html?blank`);
    const upgraded = await newer.evaluate(
      () =>
        new Promise<string>((done) => {
          window.rooms.storage.onEnded(() => undefined);
          const request = indexedDB.open('hemling', 990);
          request.onblocked = () => done('blocked');
          request.onsuccess = () => done('upgraded');
          request.onerror = () => done(String(request.error));
        }),
    );
    expect(upgraded).toBe('upgraded');
    expect(await older.evaluate(() => (window as unknown as { ended: string }).ended)).toBe('store-outdated');
    expect(await keepReading(older, toyId, 305)).toEqual({ code: 'store-outdated', mm: 305 });
    expect(await state(older)).toEqual({ ok: false, code: 'store-outdated' });
    await older.reload();
    expect(await state(older)).toEqual({ ok: false, code: 'store-newer' });
  });

  test('that forgets everything empties the store and tells the first', async () => {
    const [first, second] = [await openTab(context, site.address), await openTab(context, site.address)];
    await state(first);
    const toyId = await keepToy(first);
    await second.evaluate(async () => {
      const form = new FormData();
      form.set('shared', 'waits');
      await window.rooms.inbox.receiveShare(new Request('share', { method: 'POST', body: form }), location.href);
      for (const kept of [localStorage, sessionStorage]) kept.setItem('hemling-anything', 'typed');
      await window.rooms.inbox.forgetShared();
      await window.rooms.storage.forgetEverything();
    });
    expect(await keepReading(first, toyId, 305)).toEqual({ code: 'store-forgotten', mm: 305 });
    await first.reload();
    expect(await state(first)).toEqual({ ok: true, found: 'new' });
    expect(await second.evaluate(() => sessionStorage.length)).toBe(0);
    expect(await first.evaluate(() => Object.keys(localStorage))).toEqual(['hemling-store']);
    const databases = await first.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    expect(databases).toEqual(['hemling']);
  });
});
