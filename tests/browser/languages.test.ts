import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { directionOf, locales, ownName } from '../../app/words';
import { axeFinds, showWhole } from './axe-finds';
import { openSite, phone, type Site, untilDrawn, untilStill } from './browser';
import { judgedWalk, TOUCH } from './judged-walk';
import { turnTo } from './screen-walk';
import { textFaults } from './text-faults';
import { touchFaults } from './touch-faults';

/** As narrow as phones get. */
const NARROW = { width: 320, height: 568 };

const others = locales.filter((id) => id !== 'en');

let site: Site;
let page: Page;
let wrong: readonly string[];
let close: () => Promise<void>;
let walked: Awaited<ReturnType<typeof judgedWalk>>;
beforeAll(async () => {
  site = await openSite({ keeps: false });
  ({ page, wrong, close } = await site.visit({ ...phone, reducedMotion: 'reduce' }));
  walked = await judgedWalk(page, site.address, phone.viewport);
  await page.setViewportSize(NARROW);
}, 300_000);
afterAll(async () => {
  await close();
  await site.close();
});

test('in English no screen has anything to find, light or dark, nor to miss with a finger', () => {
  expect(walked.found).toEqual([]);
  expect(wrong).toEqual([]);
});

/** Whose screens are tried in large letters too: the language of the longest words, of the widest letters, and one that runs leftwards. */
const LARGE: readonly string[] = ['de', 'ja', 'ar'];
const STRAINS = {
  'twice as large': ':root { font-size: 200%; }',
  spaced: `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
    p { margin-block-end: 2em !important; }`,
};

/** Those that share the screens among them, each screen's colours once: what is mirrored is looked at all over. */
const sharing = others.filter((id) => directionOf(id) !== 'rtl');

test.each(others)(
  'in %s every screen fits a narrow phone and a finger, and an engine finds nothing',
  async (language) => {
    await choose(language);
    const rightToLeft = directionOf(language) === 'rtl';
    const found: string[] = [];
    for (const [index, [name, address]] of [...walked.addresses].entries()) {
      await page.emulateMedia({ colorScheme: index % 2 === 0 ? 'dark' : 'light' });
      const coloured = rightToLeft || index % sharing.length === sharing.indexOf(language);
      await turnTo(page, address);
      expect(await page.evaluate(() => document.documentElement.dir)).toBe(directionOf(language));
      const faults = await page.evaluate(textFaults, false);
      faults.push(...(await page.evaluate(touchFaults, TOUCH)));
      if (rightToLeft) faults.push(...(await page.evaluate(latinUnits)));
      if (LARGE.includes(language)) faults.push(...(await strained()));
      await showWhole(page, NARROW);
      await untilStill(page);
      faults.push(...(await axeFinds(page, coloured ? 'all' : 'all but colours')));
      await page.setViewportSize(NARROW);
      found.push(...faults.map((fault) => `${name}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(wrong).toEqual([]);
  },
);

/** In the page: units in letters of another script than the words around them, in what is folded away too. */
const latinUnits = (): readonly string[] =>
  (document.querySelector('main')?.textContent ?? '').match(/.{0,20}\b(cm|mm|in)\b/gu) ?? [];

/** What is cut off or runs out where the device's letters are twice as large, or spaced as WCAG 1.4.12 has it. */
async function strained(): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [name, rules] of Object.entries(STRAINS)) {
    await page.evaluate((css) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(css);
      document.adoptedStyleSheets = [sheet];
    }, rules);
    await untilDrawn(page);
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
