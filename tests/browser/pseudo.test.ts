import type { Page, ViewportSize } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import en from '../../locales/en.json';
import { desktop, openSite, phone, type Site, untilDrawn, type Visit } from './browser';
import { LONGER, pseudoText, speakPseudo } from './pseudo-language';
import { turnTo, walkAll } from './screen-walk';
import { textFaults } from './text-faults';

/** As narrow as phones get. */
const NARROW = { width: 320, height: 568 };

/** The largest that Chromium's own settings let a device's smallest letters be, CSS pixels. */
const SMALLEST = 24;

let site: Site;
let visit: Visit;
let addresses: ReadonlyMap<string, string>;
const broken: string[] = [];
beforeAll(async () => {
  site = await openSite({ font: 'wide', keeps: false });
  visit = await site.visit({ ...phone, viewport: NARROW, locale: 'en-US' });
  const { page } = visit;
  addresses = await walkAll(page, site.address, async (name) => {
    broken.push(...(await page.evaluate(brokenWords)).map((word) => `${name}: ${word}`));
  });
}, 300_000);
afterAll(() => site.close());

test('no word and no fraction is broken, in the widest letters on the narrowest phone', () => {
  expect(broken).toEqual([]);
});

/** Spaced as WCAG 1.4.12 has it, and the device's letters twice as large. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-block-end: 2em !important; }`;
const LARGE = ':root { font-size: 200%; }';

/** What is said of a toy that is not there: where all are to be seen, none may be missing. */
const GONE = pseudoText(en.screen.trouble['toy-gone'].title);

type Sight = readonly [name: string, window: ViewportSize, rules: string];

/** What a language can do to a layout: windows as small as they get, text twice as large or spaced, in wide letters. */
const sights: readonly Sight[] = [
  ['320 pixels wide', NARROW, ''],
  ['320 pixels wide, spaced', NARROW, SPACED],
  ['320 pixels wide, text at 200 %', NARROW, LARGE],
  ['a desktop at 200 %', { width: 640, height: 400 }, ''],
];

test('a language of long, accented words: nothing is cut and nothing left in English', async () => {
  const { page, wrong } = visit;
  await speakPseudo(page);
  expect(await faultsIn(page, addresses, sights)).toEqual([]);
  expect(wrong).toEqual([]);
});

test('nor in narrow letters, none smaller than a device may ask for', async () => {
  // Smaller ones take less room than the wide letters above.
  const other = await openSite({ font: 'narrow', keeps: false, smallest: SMALLEST });
  const moved = (text: string) => text.replaceAll(site.address.slice(0, -1), other.address.slice(0, -1));
  const kept = JSON.stringify(await visit.page.context().storageState({ indexedDB: true }));
  const { page, wrong } = await other.visit({
    ...phone,
    viewport: NARROW,
    locale: 'en-US',
    storageState: JSON.parse(moved(kept)),
  });
  await speakPseudo(page);
  const there = new Map([...addresses].map(([name, address]) => [name, moved(address)]));
  expect(await faultsIn(page, there, [['320 pixels wide', NARROW, '']])).toEqual([]);
  expect(wrong).toEqual([]);
  await other.close();
});

/** What is cut off, runs out or stands in English on any screen, in each of the sights. */
async function faultsIn(
  page: Page,
  addresses: ReadonlyMap<string, string>,
  sights: readonly Sight[],
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [name, address] of addresses) {
    await turnTo(page, address);
    if (name !== 'trouble' && (await page.locator('h1').textContent()) === GONE) found.push(`${name}: nobody is there`);
    for (const [sight, window, rules] of sights) {
      await page.setViewportSize(window);
      await page.evaluate((css) => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(css);
        document.adoptedStyleSheets = [sheet];
      }, rules);
      await untilDrawn(page);
      found.push(...(await page.evaluate(textFaults, true)).map((fault) => `${name}, ${sight}: ${fault}`));
    }
  }
  return found;
}

test('its sentences are so much longer than in English', () => {
  const sentences = sentencesOf(en);
  const length = (all: readonly string[]) => all.join('').replace(/\{\{.*?\}\}|[⟦⟧]/g, '').length;
  const share = length(sentences.map(pseudoText)) / length(sentences) - 1;
  expect(share).toBeGreaterThanOrEqual(LONGER);
  expect(share).toBeLessThan(LONGER + 0.05);
});

test('the check itself finds what is cut, what is out of the window, and what is English', async () => {
  const { page, close } = await site.visit(desktop);
  await page.setContent(`<!doctype html>
    <p>⟦fits⟧</p>
    <p style="width: 40px; height: 20px; overflow: hidden; white-space: nowrap">⟦this is cut off⟧</p>
    <p style="position: absolute; left: 1270px; white-space: nowrap">⟦this runs out⟧</p>
    <button style="width: 50px; height: 20px; white-space: nowrap; text-align: left">⟦this leaves its button⟧</button>
    <p>left in English</p>`);
  expect((await page.evaluate(textFaults, true)).map((fault) => fault.replace(/:? “.*/, '')).sort()).toEqual([
    'cut off',
    'not translated',
    'out of its button',
    'out of the window',
    expect.stringContaining('the page is'),
  ]);
  await close();
});

type Words = { readonly [name: string]: string | Words };

const sentencesOf = (words: Words): readonly string[] =>
  Object.values(words).flatMap((value) => (typeof value === 'string' ? [value] : sentencesOf(value)));

/** In the page: words, and numbers with their units, that stand on more than one line. */
function brokenWords(): string[] {
  const found: string[] = [];
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    if (text.parentElement?.closest('svg, .unseen, script')) continue;
    for (const { 0: word, index } of (text.textContent ?? '').matchAll(/[^\s-]+(?:\u00a0[^\s-]+)*/gu)) {
      const range = document.createRange();
      range.setStart(text, index);
      range.setEnd(text, index + word.length);
      const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
      if (lines.size > 1) found.push(word);
    }
  }
  return found;
}
