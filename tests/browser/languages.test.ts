import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { directionOf, locales, ownName } from '../../app/words';
import { axeFinds, showWhole } from './axe-finds';
import { openSite, phone, type Site, untilStill } from './browser';
import { addressesOf } from './screen-walk';
import { textFaults } from './text-faults';

/** As narrow as phones get. */
const NARROW = { width: 320, height: 568 };

const others = locales.filter((id) => id !== 'en');

let site: Site;
let page: Page;
let wrong: readonly string[];
let close: () => Promise<void>;
let addresses: ReadonlyMap<string, string>;
beforeAll(async () => {
  site = await openSite({ keeps: false });
  ({ page, wrong, close } = await site.visit({ ...phone, viewport: NARROW, reducedMotion: 'reduce' }));
  addresses = await addressesOf(page, site.address);
});
afterAll(async () => {
  await close();
  await site.close();
});

test.each(others)('in %s every screen fits a narrow phone, and an engine finds nothing', async (language) => {
  await choose(language);
  const found: string[] = [];
  for (const [name, address] of addresses) {
    // The app stays open: a title that was there before says nothing of the screen that comes.
    await page.evaluate(() => document.querySelector('h1')?.classList.add('before'));
    await page.goto(address);
    await page.locator('h1:not(.before)').first().waitFor();
    await untilStill(page);
    expect(await page.evaluate(() => document.documentElement.dir)).toBe(directionOf(language));
    const faults = await page.evaluate(textFaults, false);
    await showWhole(page, NARROW);
    faults.push(...(await axeFinds(page)));
    await page.setViewportSize(NARROW);
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
});

/** As a maker does: in the settings, where each language stands in its own words; nothing is loaded anew. */
async function choose(language: (typeof others)[number]): Promise<void> {
  await page.goto(`${site.address}#/settings`);
  await page.locator('select', { hasText: ownName(language) }).selectOption(language);
  await page.waitForFunction((wanted) => document.documentElement.lang === wanted, language);
}
