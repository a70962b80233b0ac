import { statSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { MeasureId, Mm } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';
import { openSite, phone, type Site, untilKept } from './browser';
import { Maker } from './maker';

const [card] = demoCards;
if (!card) throw new Error('no demo toys');
const { sizes } = bodyFrom(card);

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

test('by touch, with the network gone after the first load: from the empty app to the saved pattern', async () => {
  const { page, wrong, close } = await site.visit(phone);
  const maker = new Maker(page, site.address, true);
  await maker.open();
  await untilKept(page);
  await site.stop();

  await maker.press('Measure a toy');
  await maker.name('Thistle');
  await maker.kind('Two arms');
  await maker.press('Next: what to make');
  await maker.choose(/hooded top/i);
  await maker.press('Next: threads and marks');
  await maker.press('The marks are on');

  const seen = await measureUntil(maker, 5);
  await page.reload();
  expect(await typed(page)).toBe('');
  seen.push(...(await measureUntil(maker, 3)));

  const other = new Maker(await page.context().newPage(), site.address, true);
  await other.open();
  await other.press(/Go on with Thistle/);
  await other.field().waitFor();
  expect(other.page.url()).toBe(page.url());
  seen.push(...(await measureUntil(other, Number.POSITIVE_INFINITY)));
  await other.heading(/How long/);
  await other.press('Look it over');
  await other.heading('Look it over');
  await expect.poll(() => placeKept(page)).toBe('review');
  await other.page.close();

  await maker.toys();
  await maker.press(/Go on with Thistle/);
  await maker.heading('Look it over');
  expect(new Set(seen.map((step) => step.measure)).size).toBe(seen.length);
  expect([...new Set(seen.map((step) => step.keys))], 'the keys stay where they are').toHaveLength(1);
  expect(seen.filter((step) => step.scrolls)).toEqual([]);

  await maker.press('Draw the pattern');
  await maker.press('Put it on paper');
  const save = page.getByRole('button', { name: 'Save the PDF' });
  await save.waitFor({ timeout: 60_000 });
  const [download] = await Promise.all([page.waitForEvent('download'), save.tap()]);
  expect(download.suggestedFilename()).toBe('thistle-hooded-top.pdf');
  expect(statSync(await download.path()).size).toBeGreaterThan(10_000);
  expect(wrong).toEqual([]);
  await site.restart();
  await close();
});

type Seen = { readonly measure: string; readonly keys: number; readonly scrolls: boolean };

/** Takes up to `count` measures as the demo toy has them, by the keys on the screen; stops at the review. */
async function measureUntil(maker: Maker, count: number): Promise<Seen[]> {
  const { page } = maker;
  const seen: Seen[] = [];
  while (seen.length < count) {
    const [, measure] = /measure\/([\w-]+)$/.exec(page.url()) ?? [];
    if (!measure) break;
    await maker.field().waitFor();
    seen.push({ measure, ...(await layoutOf(page)) });
    await maker.tapLength(lengthOf(measure));
    await page.locator('#step-status').getByText('saved', { exact: true }).waitFor();
    await maker.next();
  }
  return seen;
}

const lengthOf = (measure: string): Mm => {
  const known = sizes[measure as MeasureId];
  if (!known) throw new Error(`the demo toy has no ${measure}`);
  return known.value;
};

const typed = (page: Page) => page.locator('main input').first().inputValue();

/** The step that is kept as where she is, straight from the database. */
const placeKept = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('hemling');
        opening.onsuccess = () => {
          const asked = opening.result.transaction('places').objectStore('places').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result[0]?.step);
          };
        };
      }),
  );

async function layoutOf(page: Page): Promise<{ keys: number; scrolls: boolean }> {
  return page.evaluate(() => {
    const key = document.querySelector('[data-key="1"]')?.getBoundingClientRect().top ?? -1;
    const { scrollHeight, scrollWidth } = document.documentElement;
    return { keys: Math.round(key), scrolls: scrollHeight > innerHeight || scrollWidth > innerWidth };
  });
}
