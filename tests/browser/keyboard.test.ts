import { writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createSay } from '../../app/words';
import { desktop, openSite, type Site, untilStill } from './browser';
import { Ears } from './ears';
import { clicks, hands, mainJob } from './main-job';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

/** Where what is heard is written down, if anywhere. */
const { HEARD } = process.env;

/** Names and signs that stand in every language. */
const EVERYWHERE = /Thistle|Bramble|Sorrel|Dumpling|Pip|Hemling|Letter|PDF|\bA4\b|thistle\S*pdf/g;
/** Units are written so in Japanese; Arabic has its own letters for them. */
const UNITS = { en: /\b(in|cm)\b/g, ja: /\b(in|cm)\b/g, ar: /(?!)/g };

const ways = { 'the keyboard': hands, clicks } as const;

test.each([
  ['en', 'en-GB', 'the keyboard'],
  ['ar', 'ar', 'the keyboard'],
  ['ja', 'ja', 'the keyboard'],
  ['ar', 'ar', 'clicks'],
  ['ja', 'ja', 'clicks'],
] as const)(
  'all sought by role and name, from the empty app to the saved pattern in %s (%s) by %s alone',
  async (id, locale, way) => {
    const say = await createSay(id);
    const { page, wrong, close } = await site.visit({ ...desktop, locale });
    const ears = await Ears.on(page);
    const { press, ...others } = ways[way](page, () => ears.listen(), say);
    await page.goto(site.address);
    await mainJob(page, say, { press, ...others });
    const save = page.getByRole('button', { name: say('screen.print.save') });
    await save.waitFor({ timeout: 60_000 });
    const [download] = await Promise.all([page.waitForEvent('download'), press(save)]);
    const file = download.suggestedFilename();
    expect(file).toMatch(/^thistle-.+\.pdf$/);
    await page.getByRole('status').filter({ hasText: file }).waitFor();
    await ears.listen();
    if (HEARD) writeFileSync(`${HEARD}-${id}-${way}.txt`, ears.lines());
    expect(ears.faults()).toEqual([]);
    expect(ears.heard).toContainEqual({ kind: 'said', role: 'status', words: say('screen.print.saved', { file }) });
    const foreign = ears.heard.filter(({ words }) =>
      /[a-z]{2}/i.test(words.replace(EVERYWHERE, '').replace(UNITS[id], '')),
    );
    if (id !== 'en') expect(foreign).toEqual([]);
    expect(wrong).toEqual([]);
    await close();
  },
);

test('the ears hear a lost focus, what is said twice, what has no name, and nothing that was there before', async () => {
  const { page, close } = await site.visit(desktop);
  const ears = await Ears.on(page);
  await page.goto('data:text/html,<p role="status">before</p><button aria-label="Named"></button><button></button>');
  const say = (words: string) =>
    page.evaluate((text) => document.querySelector('[role="status"]')?.replaceChildren(text), words);
  for (const words of ['once', 'twice', 'twice']) await say(words).then(() => ears.listen());
  for (let stop = 0; stop < 2; stop++) await page.keyboard.press('Tab').then(() => ears.listen());
  expect(ears.lines()).not.toContain('before');
  expect(ears.faults()).toEqual(['no name: none', 'twice: twice', 'no name: button']);
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
