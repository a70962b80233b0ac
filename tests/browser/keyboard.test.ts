import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { formatLength, type MeasureId } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';
import { desktop, openSite, type Site, untilStill } from './browser';
import { Maker } from './maker';

const [card] = demoCards;
if (!card) throw new Error('no demo toys');
const { sizes } = bodyFrom(card);

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

test('by keyboard alone: from the empty app to the saved pattern', async () => {
  const { page, wrong, close } = await site.visit(desktop);
  const maker = new Maker(page, site.address);
  await maker.open();
  await follow(page, 'Measure a toy');

  await tabTo(page, 'Name of the toy');
  await page.keyboard.type('Thistle');
  await page.keyboard.press('Enter');
  await maker.heading(/kind of body/);
  await follow(page, 'Next');
  await maker.heading(/built/);
  await tabTo(page, 'none');
  await page.keyboard.press('ArrowDown');
  expect(await focused(page)).toBe('at the sides');
  await follow(page, 'Next: what to make');
  await follow(page, /^Hooded top/);
  await maker.heading(/made/);
  await follow(page, 'Next: threads and marks');
  await follow(page, 'The marks are on');

  for (let steps = 0; steps < 40; steps++) {
    await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
    const [, measure] = /measure\/([\w-]+)$/.exec(page.url()) ?? [];
    if (!measure) break;
    const known = sizes[measure as MeasureId];
    const before = page.url();
    await page.keyboard.type(formatLength(known?.value ?? 0, { unit: 'in', locale: 'en-US' }, true));
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => url.href !== before);
  }
  await maker.heading(/How long/);
  await follow(page, 'Look it over');
  await maker.heading('Look it over');
  await follow(page, 'Draw the pattern');
  await page.getByRole('link', { name: 'Put it on paper' }).waitFor();
  await follow(page, 'Put it on paper');
  await page.getByRole('button', { name: 'Save the PDF' }).waitFor({ timeout: 60_000 });
  await tabTo(page, 'Save the PDF');
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(download.suggestedFilename()).toBe('thistle-hooded-top.pdf');
  expect(wrong).toEqual([]);
  await close();
});

test('the keys on the screen are one stop, walked with the arrows, and type like any other', async () => {
  const { page, close } = await site.visit(desktop);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  await maker.step('head-girth');
  await tabTo(page, '1');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  expect(await maker.field().inputValue()).toMatch(/16⅛$/);
  await page.keyboard.press('Tab');
  expect(await focused(page)).toBe('Skip');
  await close();
});

test('focus is seen wherever it goes, and nothing that has it is hidden', async () => {
  const { page, close } = await site.visit(desktop);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  const ready: Readonly<Record<string, string>> = { pattern: 'Put it on paper', print: 'Save the PDF' };
  for (const screen of ['choices', 'marks', 'measure/head-girth', 'review', 'pattern', 'print']) {
    await maker.go(screen, ready[screen]);
    await untilStill(page);
    for (let stop = 0; stop < 25; stop++) {
      await page.keyboard.press('Tab');
      const seen = await page.evaluate(focusSeen);
      expect(seen, `${screen}, stop ${stop}`).toBe(true);
    }
  }
  await close();
});

/** In the page: whether what has the focus lies in the window, not under anything, and is marked. */
function focusSeen(): boolean {
  const held = document.activeElement;
  if (!held || held === document.body) return true;
  const { left, top, width, height } = held.getBoundingClientRect();
  const above = document.elementFromPoint(left + width / 2, top + height / 2);
  const uncovered = above !== null && (held.contains(above) || above.contains(held));
  const marked = [held, held.closest('label'), held.parentElement].some((each) => {
    if (!each) return false;
    const { outlineStyle, boxShadow, borderBlockEndColor } = getComputedStyle(each);
    const indigo = getComputedStyle(document.documentElement).getPropertyValue('--indigo');
    return outlineStyle !== 'none' || boxShadow !== 'none' || borderBlockEndColor === indigo;
  });
  return uncovered && (marked || held.tagName === 'INPUT');
}

async function follow(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, name);
  const before = page.url();
  await page.keyboard.press('Enter');
  await page.waitForURL((url) => url.href !== before);
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
}

/** Presses the tab key until what is called so has the focus. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const passed: string[] = [];
  for (let stop = 0; stop < 80; stop++) {
    const here = await focused(page);
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    passed.push(here);
    await page.keyboard.press('Tab');
  }
  throw new Error(`the tab key does not lead to ${name}: ${passed.join(' | ')}`);
}

/** What the element that has the focus is called. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const held = document.activeElement;
    if (!held) return '';
    const labels =
      held instanceof HTMLInputElement ? [...(held.labels ?? [])].map((label) => label.textContent ?? '') : [];
    const words = held.getAttribute('aria-label') ?? labels[0] ?? held.textContent ?? '';
    return words.replace(/\s+/g, ' ').trim();
  });
