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

/** Whose screens are tried in large letters too: the language of the longest words, of the widest letters, and one that runs leftwards. */
const LARGE: readonly string[] = ['de', 'ja', 'ar'];
const STRAINS = {
  'twice as large': ':root { font-size: 200%; }',
  spaced: `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
    p { margin-block-end: 2em !important; }`,
};

test.each(others)('in %s every screen fits a narrow phone, and an engine finds nothing', async (language) => {
  await choose(language);
  // Colours are judged in the dark in every other language: `axe.test.ts` judges both in English.
  await page.emulateMedia({ colorScheme: others.indexOf(language) % 2 === 0 ? 'dark' : 'light' });
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
    if (LARGE.includes(language)) faults.push(...(await strained()));
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
});

/** What is cut off or runs out where the device's letters are twice as large, or spaced as WCAG 1.4.12 has it. */
async function strained(): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [name, rules] of Object.entries(STRAINS)) {
    await page.evaluate((css) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(css);
      document.adoptedStyleSheets = [sheet];
    }, rules);
    await untilStill(page);
    const faults = await page.evaluate(textFaults, false);
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
  return found;
}

/** As a maker does: in the settings, where each language stands in its own words; nothing is loaded anew. */
async function choose(language: (typeof others)[number]): Promise<void> {
  await page.goto(`${site.address}#/settings`);
  await page.locator('select', { hasText: ownName(language) }).selectOption(language);
  await page.waitForFunction((wanted) => document.documentElement.lang === wanted, language);
}
