import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContextOptions, Page, ViewportSize } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DIST, desktop, openSite, phone, type Site, untilStill } from './browser';
import { Maker } from './maker';
import { screenWalk } from './screen-walk';

type Words = { readonly [name: string]: string | Words };

let site: Site;
beforeAll(async () => {
  site = await openSite({ font: 'wide', keeps: false });
});
afterAll(() => site.close());

/** What a language can do to a layout: windows as small as they get, and text twice as large, in wide letters. */
type Sight = readonly [name: string, window: ViewportSize, textSize: string];
const devices: readonly (readonly [name: string, options: BrowserContextOptions, sights: readonly Sight[]])[] = [
  [
    'a phone',
    phone,
    [
      ['320 pixels wide', { width: 320, height: 568 }, '100%'],
      ['as it is', phone.viewport, '100%'],
      ['text at 200 %', phone.viewport, '200%'],
    ],
  ],
  ['a desktop', desktop, [['at 200 %', { width: 640, height: 400 }, '100%']]],
];

test.each(devices)(
  'a language of long, accented words: nothing is cut and nothing left in English, on %s',
  async (_, options, sights) => {
    const { page, wrong, close } = await site.visit(options);
    const addresses = await walkInEnglish(page);
    await page.route(/\/assets\/en-[\w-]+\.js$/, async (route) => {
      const name = new URL(route.request().url()).pathname.split('/').at(-1) ?? '';
      await route.fulfill({ contentType: 'text/javascript', body: await pseudoModule(name) });
    });
    const found: string[] = [];
    for (const [name, address] of addresses) {
      await page.goto('about:blank');
      await page.goto(address);
      await page.locator('h1').first().waitFor();
      for (const [sight, window, textSize] of sights) {
        await page.setViewportSize(window);
        await page.evaluate((size) => document.documentElement.style.setProperty('font-size', size), textSize);
        await untilStill(page);
        found.push(...(await page.evaluate(faults)).map((fault) => `${name}, ${sight}: ${fault}`));
      }
    }
    expect(found).toEqual([]);
    expect(wrong).toEqual([]);
    await close();
  },
);

test('the check itself finds what is cut, what is out of the window, and what is English', async () => {
  const { page, close } = await site.visit(desktop);
  await page.setContent(`<!doctype html>
    <p>⟦fits⟧</p>
    <p style="width: 40px; height: 20px; overflow: hidden; white-space: nowrap">⟦this is cut off⟧</p>
    <p style="position: absolute; left: 1270px; white-space: nowrap">⟦this runs out⟧</p>
    <button style="width: 50px; height: 20px; white-space: nowrap; text-align: left">⟦this leaves its button⟧</button>
    <p>left in English</p>`);
  expect((await page.evaluate(faults)).map((fault) => fault.replace(/:? “.*/, '')).sort()).toEqual([
    'cut off',
    'not translated',
    'out of its button',
    'out of the window',
    expect.stringContaining('the page is'),
  ]);
  await close();
});

/** The screens' addresses, once each, as the walk in English comes by them. */
async function walkInEnglish(page: Page): Promise<ReadonlyMap<string, string>> {
  const maker = new Maker(page, site.address);
  const addresses = new Map<string, string>();
  for (const [name, reach] of screenWalk) {
    await reach(maker);
    await untilStill(page);
    if (name !== 'welcome' && ![...addresses.values()].includes(page.url())) addresses.set(name, page.url());
  }
  return addresses;
}

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

/** In the page: text that is cut off, runs out of the window, or stands in no language file. */
function faults(): string[] {
  const found: string[] = [];
  const { scrollWidth } = document.documentElement;
  if (scrollWidth > innerWidth) found.push(`the page is ${scrollWidth} wide in a window of ${innerWidth}`);
  const mine =
    /^(Hemling|Bramble|Thistle|in|cm|mm|English|[\d\s.,×–·%+−⁄⅛¼⅜½⅝¾⅞/]|A[034]|Letter|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|AM|PM|:|MB)*$/;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let open = 0;
  while (walker.nextNode()) {
    const text = walker.currentNode.textContent ?? '';
    const holder = walker.currentNode.parentElement;
    if (!holder || text.trim() === '' || holder.closest('.unseen, svg, option, pre')) continue;
    if (open === 0 && !text.includes('⟦') && !mine.test(text.trim()))
      found.push(`not translated: “${text.trim().slice(0, 60)}”`);
    open += (text.match(/⟦/g) ?? []).length - (text.match(/⟧/g) ?? []).length;
    const range = document.createRange();
    range.selectNodeContents(walker.currentNode);
    const { left, right, width } = range.getBoundingClientRect();
    if (width > 0 && (left < -1 || right > innerWidth + 1))
      found.push(`out of the window: “${text.trim().slice(0, 60)}”`);
    for (let box: Element | null = holder; box && box !== document.body; box = box.parentElement) {
      const { overflowX, overflowY, textOverflow } = getComputedStyle(box);
      const meant = textOverflow === 'ellipsis';
      const cuts = !meant && [overflowX, overflowY].some((value) => value === 'hidden' || value === 'clip');
      if (cuts && (box.scrollWidth > box.clientWidth + 1 || box.scrollHeight > box.clientHeight + 1))
        found.push(`cut off: “${text.trim().slice(0, 60)}”`);
    }
    const button = holder.closest('button, .go, .plain, .pick');
    if (button) {
      const outer = button.getBoundingClientRect();
      const inner = range.getBoundingClientRect();
      if (
        inner.width > 0 &&
        (inner.left < outer.left - 1 || inner.right > outer.right + 1 || inner.bottom > outer.bottom + 1)
      )
        found.push(`out of its button: “${text.trim().slice(0, 60)}”`);
    }
  }
  return [...new Set(found)];
}
