import { source } from 'axe-core';
import type { Page, ViewportSize } from 'playwright-core';
import { untilStill } from './browser';

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

/** What an engine finds wrong with the screen as it is, one line a rule. */
export async function axeFinds(page: Page): Promise<readonly string[]> {
  await page.evaluate(source);
  return page.evaluate(async (runOnly) => {
    const { axe } = window as unknown as { axe: Axe };
    return (await axe.run(document, { runOnly })).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  }, RULES);
}

/** Makes the window as high as the page: what a bar in sight covers until it is scrolled on is not too small to touch. */
export async function showWhole(page: Page, { width, height }: ViewportSize): Promise<void> {
  const needed = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(height, needed) });
  await untilStill(page);
}
