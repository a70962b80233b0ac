import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { bodyFrom } from '../../app/measuring';
import { demoCards } from '../../app/measuring/demo';
import { openBareSite } from './bare-site';
import type { Site, Visit } from './browser';
import type {} from './page/page';

const card = demoCards[0];
if (!card) throw new Error('no demo toys');
const body = bodyFrom(card);
const order = { garment: 'hooded-top', date: '2026-11-20' };

let site: Site;
let visit: Visit;
let page: Page;
beforeAll(async () => {
  site = await openBareSite();
});
afterAll(() => site.close());
beforeEach(async () => {
  visit = await site.visit();
  page = visit.page;
  await page.goto(site.address);
  await page.waitForFunction(() => 'rooms' in window);
});
afterEach(() => visit.close());

/** Drafts, lays out and prints for a toy of this name; gives the PDF's bytes as text of one byte a letter. */
const printed = (toy: string) =>
  page.evaluate(
    async ({ body, order, toy }) => {
      const { draft, layOut, print } = window.rooms.work;
      const outcome = await draft(body, order, toy);
      if (!outcome.ok) throw new Error(outcome.flags.map((flag) => flag.code).join());
      const layout = await layOut(outcome.draft, 'a4');
      const bytes = await print([{ draft: outcome.draft, layout }], { language: 'en', units: 'in' });
      return Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
    },
    { body, order, toy },
  );

describe('through the bridge, under the content policy', () => {
  test('a garment is drafted, laid out and printed, the same bytes every time', async () => {
    const first = await printed('Bramble');
    expect(first.slice(0, 5)).toBe('%PDF-');
    await page.evaluate(() => window.rooms.work.endWork());
    expect(await printed('Bramble')).toBe(first);
    expect(visit.wrong).toEqual([]);
  });

  test('a name in any script is written in its face; what no face has becomes a picture', async () => {
    const pictures = (pdf: string) => pdf.match(/\/Subtype \/Image/g)?.length ?? 0;
    const faces = (pdf: string) => [...new Set(pdf.match(/(?<=HEMLNG\+)\w+/g) ?? [])].sort();
    const told = await printed('Bramble');
    expect([faces(told), pictures(told)]).toEqual([[], 0]);
    const named = await printed('مريم Ōkami 熊');
    expect([faces(named), pictures(named)]).toEqual([['arabic', 'japanese', 'latin'], 0]);
    expect(pictures(await printed('Thistle 🧸 ทองคำ'))).toBeGreaterThan(1);
    expect(visit.wrong).toEqual([]);
  });

  test('an order for nothing is refused with its code', async () => {
    const code = await page.evaluate(
      (body) => window.rooms.work.draft(body, { garment: 'spacesuit' }, 'X').catch(({ code }) => code),
      body,
    );
    expect(code).toBe('unknown-garment');
  });

  test('of many drafts asked for at once the last is made, the others are cancelled', async () => {
    const codes = await page.evaluate(
      ({ body, order }) =>
        Promise.all(
          Array.from({ length: 20 }, (_, each) =>
            window.rooms.work.draft(body, order, `Toy ${each}`).then(
              (outcome) => (outcome.ok ? outcome.draft.toy : 'refused'),
              ({ code }) => code,
            ),
          ),
        ),
      { body, order },
    );
    expect(codes).toEqual([...Array.from({ length: 19 }, () => 'work-cancelled'), 'Toy 19']);
  });
});

test('no worker is started, and none of its code fetched, before it is needed', async () => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.reload();
  await page.waitForFunction(() => 'rooms' in window);
  expect(page.workers()).toHaveLength(0);
  expect(fetched.filter((address) => /worker|draft|pdf/.test(address))).toEqual([]);
  await printed('Bramble');
  expect(page.workers()).toHaveLength(1);
});

test('a worker that cannot be loaded is tried once more, then told with a code; the next request works', async () => {
  let refused = 0;
  await page.route(/worker.*\.js/, (route) => {
    refused += 1;
    return refused > 2 ? route.continue() : route.abort();
  });
  const ask = () =>
    page.evaluate(
      ({ body, order }) =>
        window.rooms.work.draft(body, order, 'X').then(
          ({ ok }) => ok,
          ({ code }) => code,
        ),
      { body, order },
    );
  expect(await ask()).toBe('work-failed');
  expect(refused).toBe(2);
  expect(await ask()).toBe(true);
});
