/** A tab of the page without screens, and the few things tests of the store do in it. */
import type { BrowserContext, Page } from 'playwright-core';
import type {} from './page/page';

/** Opens a tab, after `prepare` has run in it before any of our code. */
export async function openTab(context: BrowserContext, address: string, prepare?: () => void): Promise<Page> {
  const page = await context.newPage();
  if (prepare) await page.addInitScript(prepare);
  await page.goto(address);
  await page.waitForFunction(() => 'rooms' in window);
  return page;
}

export const state = (page: Page) => page.evaluate(() => window.rooms.storage.openStore());

export const keepToy = (page: Page) =>
  page.evaluate(async () => (await window.rooms.storage.saveToy({ name: 'Bramble', kind: 'upright' })).id);

/** Enters a reading; gives 'saved', or the code and the length that was handed back. */
export const keepReading = (page: Page, toyId: string, mm = 300) =>
  page.evaluate(
    ([toyId, mm]) =>
      window.rooms.storage.saveReading(toyId, 'neck-girth', mm).then(
        () => 'saved',
        ({ code, unsaved }) => ({ code, mm: unsaved?.mm }),
      ),
    [toyId, mm] as const,
  );

export const lengths = (page: Page, toyId: string) =>
  page.evaluate(async (id) => (await window.rooms.storage.historyOf(id)).map((reading) => reading.mm), toyId);
