import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { ViewportSize } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DIST, desktop, openSite, phone, type Site, untilDrawn, type Visit } from './browser';
import { turnTo, walkAll } from './screen-walk';
import { textFaults } from './text-faults';

type Words = { readonly [name: string]: string | Words };

/** As narrow as phones get. */
const NARROW = { width: 320, height: 568 };

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

/** What a language can do to a layout: windows as small as they get, and text twice as large, in wide letters. */
const sights: readonly (readonly [name: string, window: ViewportSize, textSize: string])[] = [
  ['320 pixels wide', NARROW, '100%'],
  ['as it is', phone.viewport, '100%'],
  ['text at 200 %', phone.viewport, '200%'],
  ['a desktop at 200 %', { width: 640, height: 400 }, '100%'],
];

test('a language of long, accented words: nothing is cut and nothing left in English', async () => {
  const { page, wrong } = visit;
  await page.route(/\/assets\/en-[\w-]+\.js$/, async (route) => {
    const name = new URL(route.request().url()).pathname.split('/').at(-1) ?? '';
    await route.fulfill({ contentType: 'text/javascript', body: await pseudoModule(name) });
  });
  await page.goto('about:blank');
  const found: string[] = [];
  for (const [name, address] of addresses) {
    await turnTo(page, address);
    for (const [sight, window, textSize] of sights) {
      await page.setViewportSize(window);
      await page.evaluate((size) => document.documentElement.style.setProperty('font-size', size), textSize);
      await untilDrawn(page);
      found.push(...(await page.evaluate(textFaults, true)).map((fault) => `${name}, ${sight}: ${fault}`));
    }
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
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

/** A module of words, every sentence of it in the pseudo-language: a third longer, accented, in brackets. */
async function pseudoModule(name: string): Promise<string> {
  const file = join(DIST, 'assets', readdirSync(join(DIST, 'assets')).find((each) => each === name) ?? '');
  const module = (await import(pathToFileURL(file).href)) as { default: Words };
  return `export default ${JSON.stringify(pseudo(module.default))}`;
}

function pseudo(words: Words): Words {
  return Object.fromEntries(
    Object.entries(words).map(([name, value]) => [name, typeof value === 'string' ? pseudoText(value) : pseudo(value)]),
  );
}

const ACCENTED: Readonly<Record<string, string>> = {
  a: 'å',
  e: 'é',
  i: 'ï',
  o: 'ö',
  u: 'ü',
  A: 'Å',
  E: 'É',
  c: 'ç',
  n: 'ñ',
  y: 'ÿ',
};
const LONGER = ' ëxtrå';

function pseudoText(text: string): string {
  const parts = text.split(/(\{\{.*?\}\})/);
  const accented = parts.map((part) =>
    part.startsWith('{{') ? part : part.replace(/[aeiouAEcny]/g, (letter) => ACCENTED[letter] ?? letter),
  );
  const more = LONGER.repeat(Math.ceil(text.length / 3 / LONGER.length)).slice(0, Math.ceil(text.length / 3));
  return `⟦${accented.join('')}${more}⟧`;
}

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
