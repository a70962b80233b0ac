import { source } from 'axe-core';
import type { Page, ViewportSize } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { desktop, openSite, phone, type Site, untilStill } from './browser';
import { Maker } from './maker';
import { screenWalk } from './screen-walk';

/** What WCAG 2.2 AA asks as far as an engine can judge it, and what the engine's makers hold to be good practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

type Axe = {
  readonly run: (
    what: Document,
    how: { readonly runOnly: readonly string[] },
  ) => Promise<{
    readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  }>;
};

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

test.each([
  ['phone', phone],
  ['desktop', desktop],
] as const)('no screen has anything to find, light or dark, on a %s', async (_, options) => {
  const { page, wrong, close } = await site.visit({ ...options, reducedMotion: 'reduce' });
  const maker = new Maker(page, site.address);
  const found: string[] = [];
  for (const [name, reach] of screenWalk) {
    await reach(maker);
    await untilStill(page);
    await showWhole(page, options.viewport);
    await page.evaluate(source);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const violations = await page.evaluate(async (runOnly) => {
        const { axe } = window as unknown as { axe: Axe };
        return (await axe.run(document, { runOnly })).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      }, RULES);
      found.push(...violations.map((violation) => `${name}, ${colorScheme}: ${violation}`));
    }
    await page.setViewportSize(options.viewport);
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
  await close();
});

/** Makes the window as high as the page: what a bar in sight covers until it is scrolled on is not too small to touch. */
async function showWhole(page: Page, { width, height }: ViewportSize): Promise<void> {
  const needed = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(height, needed) });
  await untilStill(page);
}
