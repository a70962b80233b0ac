import { source } from 'axe-core';
import type { Page, ViewportSize } from 'playwright-core';
import { untilDrawn } from './browser';

/** What WCAG 2.2 AA asks as far as an engine can judge it, and what the engine's makers hold to be good practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The rules that hang on the theme. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

const JUDGED = {
  all: { runOnly: RULES },
  colours: { runOnly: { type: 'rule', values: COLOURS } },
  'all but colours': { runOnly: RULES, rules: Object.fromEntries(COLOURS.map((id) => [id, { enabled: false }])) },
} as const;

type Axe = {
  readonly run: (
    what: Document,
    how: Readonly<Record<string, unknown>>,
  ) => Promise<{
    readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  }>;
};

/** What an engine finds wrong with the screen as it is, one line a rule. */
export async function axeFinds(page: Page, judged: keyof typeof JUDGED = 'all'): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  return page.evaluate(async (rules) => {
    const { axe } = window as unknown as { axe: Axe };
    // Only what is wrong is wanted, and no way to find it again; frames have no engine in them to answer.
    const lean = { resultTypes: ['violations'], selectors: false, preload: false, iframes: false };
    return (await axe.run(document, { ...rules, ...lean })).violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html}`,
    );
  }, JUDGED[judged]);
}

/** Makes the window as high as the page: what a bar in sight covers until it is scrolled on is not too small to touch. */
export async function showWhole(page: Page, { width, height }: ViewportSize): Promise<void> {
  const needed = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(height, needed) });
  await untilDrawn(page);
}
