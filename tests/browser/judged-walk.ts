import type { Page, ViewportSize } from 'playwright-core';
import { axeFinds, showWhole } from './axe-finds';
import { untilStill } from './browser';
import { walkAll } from './screen-walk';
import { touchFaults } from './touch-faults';

/** Smaller than this a finger misses, CSS pixels. */
export const TOUCH = 48;

/** Walks every screen in English. Gives what is wrong with any of them, light or dark, and their addresses. */
export async function judgedWalk(page: Page, site: string, viewport: ViewportSize) {
  const found: string[] = [];
  const addresses = await walkAll(page, site, async (name) => {
    await untilStill(page);
    const faults = await page.evaluate(touchFaults, TOUCH);
    await showWhole(page, viewport);
    faults.push(...(await axeFinds(page)));
    await page.emulateMedia({ colorScheme: 'dark' });
    faults.push(...(await axeFinds(page, 'colours')).map((fault) => `dark: ${fault}`));
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize(viewport);
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  });
  return { found, addresses };
}
