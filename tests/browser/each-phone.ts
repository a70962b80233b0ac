import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, onTestFinished } from 'vitest';
import { beginToy } from './begin-toy';
import { openSite, phone, type Served, type Site, wrongIn } from './browser';
import { Maker } from './maker';

const options = { ...phone, locale: 'en-US', serviceWorkers: 'block' } satisfies BrowserContextOptions;

/**
 * For every test of a file a phone with an empty store and a page of its own, on which nothing went wrong in the end.
 * The app's files are read and compiled only once: the phone is the same, emptied.
 * @param how of the site and its browser
 */
export function eachPhone(how: Pick<Served, 'windows'> = {}) {
  let site: Site;
  let context: BrowserContext;
  let page: Page;
  let maker: Maker;
  beforeAll(async () => {
    site = await openSite({ ...how, keeps: false });
    context = await site.browser.newContext(options);
  });
  afterAll(() => site.close());
  beforeEach(async () => {
    page = await context.newPage();
    await empty(page, site.address);
    maker = new Maker(page, site.address);
    const wrong = wrongIn(page, site.address, options);
    onTestFinished(async () => {
      expect(wrong).toEqual([]);
      await Promise.all(context.pages().map((each) => each.close()));
    });
  });
  return {
    get maker() {
      return maker;
    },
    get page() {
      return page;
    },
    /** From the first screen to the step of a measure of a toy of her own. */
    atStep: async (measure: string) => {
      await maker.open();
      await beginToy(maker);
      await maker.step(measure);
    },
  };
}

/** Forgets all that the app keeps, files and settings too. */
async function empty(page: Page, address: string): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', { origin: new URL(address).origin, storageTypes: 'all' });
  await devtools.detach();
}
