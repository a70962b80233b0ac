import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFinds, showWhole } from './axe-finds';
import { desktop, openSite, phone, type Site, untilStill } from './browser';
import { Maker } from './maker';
import { screenWalk } from './screen-walk';
import { touchFaults } from './touch-faults';

/** Smaller than this a finger misses, CSS pixels. */
const TOUCH = 48;

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

test.each([
  ['phone', phone],
  ['desktop', desktop],
] as const)('no screen has anything to find, light or dark, nor to miss with a finger, on a %s', async (_, options) => {
  const { page, wrong, close } = await site.visit({ ...options, reducedMotion: 'reduce' });
  const maker = new Maker(page, site.address);
  const found: string[] = [];
  for (const [name, reach] of screenWalk) {
    await reach(maker);
    await untilStill(page);
    await page.locator('html:not(.just-changed)').waitFor();
    found.push(...(await page.evaluate(touchFaults, TOUCH)).map((fault) => `${name}: ${fault}`));
    await showWhole(page, options.viewport);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      found.push(...(await axeFinds(page)).map((violation) => `${name}, ${colorScheme}: ${violation}`));
    }
    await page.setViewportSize(options.viewport);
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
  await close();
});
