import { source } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { beginToy } from './begin-toy';
import { desktop, openSite, phone, type Site } from './browser';
import { type FlatPhoto, flatPhoto, flatScrap, type Spot } from './flat-photo';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

/** Beside the give, what rounding to a whole millimetre on the screen may hide. */
const ROUNDING_MM = 0.5;

test('by touch: six taps give the length within its give, and a finger on a mark makes the give smaller', async () => {
  const { page, wrong, close } = await site.visit({ ...phone, colorScheme: 'dark' });
  const maker = new Maker(page, site.address, true);
  const { spots, truth } = await reachPhoto(maker);
  const places = await onScreen(page, spots);
  for (const { x, y } of places) await page.touchscreen.tap(x, y);
  const tapped = await readOff(page);
  expect(Math.abs(tapped.mm - truth)).toBeLessThan(tapped.give + ROUNDING_MM);

  for (const [at, place] of places.entries()) await dragFinely(page, place, spots[at] ?? place, at);
  const dragged = await readOff(page);
  expect(dragged.give).toBeLessThan(tapped.give / 2);
  expect(Math.abs(dragged.mm - truth)).toBeLessThan(dragged.give + ROUNDING_MM);
  expect(await faults(page)).toEqual([]);

  await maker.press('Use this number');
  await maker.field().waitFor();
  expect(page.url()).toMatch(/measure\/armhole-depth$/);
  expect(await maker.field().inputValue()).not.toBe('');
  const [kept] = await readingsKept(page);
  expect(kept).toMatchObject({ measureId: 'armhole-depth', from: 'photo' });
  expect(Math.abs((kept?.mm ?? 0) - truth)).toBeLessThan(dragged.give);
  expect(wrong).toEqual([]);
  await close();
});

test('by keyboard alone: tab to a mark, arrows by one pixel, with shift by ten', async () => {
  const { page, wrong, close } = await site.visit(desktop);
  const maker = new Maker(page, site.address);
  const { spots, truth } = await reachPhoto(maker);
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
  for (const spot of spots) {
    await page.keyboard.press('Tab');
    await walkTo(page, spot);
  }
  const { mm, give } = await readOff(page);
  expect(Math.abs(mm - truth)).toBeLessThan(give + ROUNDING_MM);
  expect(give).toBeLessThan(0.06 * truth);
  expect(await faults(page)).toEqual([]);
  while ((await page.evaluate(() => document.activeElement?.textContent)) !== 'Use this number')
    await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await maker.field().waitFor();
  expect((await readingsKept(page)).map(({ from }) => from)).toEqual(['photo']);
  expect(wrong).toEqual([]);
  await close();
});

test('what is no card is refused in words, and a file that is no picture too', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address, true);
  const { spots } = await reachPhoto(maker, async () => {
    const file = { name: 'no.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') };
    await page.locator('input[type=file]').first().setInputFiles(file);
    await page.getByText('This picture cannot be read').waitFor();
  });
  const [a, b, c, d] = await onScreen(page, spots);
  for (const place of [a, c, b, d]) await page.touchscreen.tap(place?.x ?? 0, place?.y ?? 0);
  await page.getByRole('alert').filter({ hasText: 'do not look like a card' }).waitFor();
  expect(await page.getByRole('button', { name: 'Use this number' }).isDisabled()).toBe(true);
  await close();
});

test('the outline of a scrap: corners tapped in order, one taken back, one nudged; what fits lies on it', async () => {
  const { page, wrong, close } = await site.visit({ ...phone, locale: 'en-GB' });
  const maker = new Maker(page, site.address, true);
  await maker.borrow('Pip');
  await maker.press(/^Make something/);
  await maker.choose(/^Bib/);
  await maker.go('cloth', /That will do|Save as a PDF/);
  await page.getByRole('radio', { name: 'a scrap' }).check();
  await maker.press('Its outline by photo');
  await maker.heading('A scrap in a photo');
  expect(await faults(page)).toEqual([]);
  const photo = await flatScrap(page);
  await page.locator('input[type=file]').first().setInputFiles(photo.file);
  await page.getByRole('slider').first().waitFor();
  const tap = async (spots: readonly Spot[]) => {
    for (const { x, y } of await onScreen(page, spots)) await page.touchscreen.tap(x, y);
  };
  await tap([...photo.card, ...photo.thread]);
  const [a, b, c, d, ...others] = photo.corners;
  if (!a || !b || !c || !d) return expect.fail('four corners');
  await tap([a, c, b, d]);
  await page.getByRole('alert').filter({ hasText: 'crosses itself' }).waitFor();
  for (let back = 0; back < 3; back++) await maker.press('Take one back');
  await tap([b, c, d, ...others]);
  for (const mark of (await page.getByRole('slider').all()).slice(0, -1)) {
    await mark.focus();
    for (const key of ['ArrowLeft', 'ArrowRight']) await page.keyboard.press(key);
  }
  const corner = page.getByRole('slider', { name: 'Corner 6 of the scrap' });
  const [, x = 0] = /(\d+) across/.exec((await corner.getAttribute('aria-valuetext')) ?? '') ?? [];
  await maker.press('Left');
  expect(await corner.getAttribute('aria-valuetext')).toContain(`${Number(x) - 1} across`);
  const told = (await page.locator('.sight-panel').textContent()) ?? '';
  const [long = 0, wide = 0, give = 0] = [...told.matchAll(/([\d.]+)\s*cm/g)].map(([, cm]) => 10 * Number(cm));
  expect(Math.abs(long - photo.long)).toBeLessThan(2 * give);
  expect(Math.abs(wide - photo.wide)).toBeLessThan(2 * give);
  expect(await faults(page)).toEqual([]);
  await maker.press('Use this outline');
  await page.getByText('It fits. Lay the pieces like this.').waitFor();
  const edge = await page.locator('.lay-cloth').getAttribute('d');
  expect(edge?.match(/[ML]/g)).toHaveLength(photo.corners.length);
  expect(wrong).toEqual([]);
  await close();
});

/** From the empty app to the photo of a straight measure's step; `before` the photo is chosen. */
async function reachPhoto(maker: Maker, before?: () => Promise<void>): Promise<FlatPhoto> {
  const { page } = maker;
  await maker.open();
  await beginToy(maker);
  await maker.press('centimetres');
  await maker.step('armhole-depth');
  await maker.press('By photo');
  await maker.heading('Measure in a photo');
  expect(await faults(page)).toEqual([]);
  await before?.();
  const photo = await flatPhoto(page);
  await page.locator('input[type=file]').first().setInputFiles(photo.file);
  await page.getByRole('slider').first().waitFor();
  return photo;
}

/** Where spots of the photo are on the screen. */
const onScreen = (page: Page, spots: readonly Spot[]): Promise<Spot[]> =>
  page.evaluate((all) => {
    const matrix = document.querySelector<SVGSVGElement>('main section svg')?.getScreenCTM();
    return all.map(({ x, y }) => {
      const place = new DOMPoint(x, y).matrixTransform(matrix ?? undefined);
      return { x: place.x, y: place.y };
    });
  }, spots);

/** Where a mark is set now, as a screen reader is told. */
async function markAt(page: Page, which: number): Promise<Spot> {
  const told = await page.getByRole('slider').nth(which).getAttribute('aria-valuetext');
  const [, x, y] = /(\d+) across, (\d+) down/.exec(told ?? '') ?? [];
  return { x: Number(x), y: Number(y) };
}

/** Puts a finger on a mark and moves it until the mark is at the spot: two pixels of the screen to one of the photo. */
async function dragFinely(page: Page, from: Spot, spot: Spot, which: number): Promise<void> {
  const client = await page.context().newCDPSession(page);
  const now = await markAt(page, which);
  const to = { x: from.x + 2 * (spot.x - now.x), y: from.y + 2 * (spot.y - now.y) };
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: Spot[]) =>
    client.send('Input.dispatchTouchEvent', { type, touchPoints });
  await touch('touchStart', [from]);
  await touch('touchMove', [{ x: from.x + 12, y: from.y + 12 }]);
  await touch('touchMove', [to]);
  await touch('touchEnd', []);
  await client.detach();
}

/** Moves the mark that has the focus to the spot with the arrow keys. */
async function walkTo(page: Page, spot: Spot): Promise<void> {
  await page.keyboard.press('Enter');
  const told = () => page.evaluate(() => document.activeElement?.getAttribute('aria-valuetext') ?? '');
  const [, x = 0, y = 0] = /(\d+) across, (\d+) down/.exec(await told()) ?? [];
  const walk = async (by: number, forth: string, back: string) => {
    const key = by > 0 ? forth : back;
    for (let left = Math.abs(by); left > 0; left -= left >= 10 ? 10 : 1)
      await page.keyboard.press(left >= 10 ? `Shift+${key}` : key);
  };
  await walk(Math.round(spot.x) - Number(x), 'ArrowRight', 'ArrowLeft');
  await walk(Math.round(spot.y) - Number(y), 'ArrowDown', 'ArrowUp');
}

/** The length and its give as they stand on the screen, mm. */
async function readOff(page: Page): Promise<{ mm: number; give: number }> {
  const words = await page.getByRole('status').filter({ hasText: '±' }).textContent();
  const [, cm, give] = /([\d.]+)\s*cm\s*±\s*([\d.]+)\s*cm/.exec(words ?? '') ?? [];
  return { mm: 10 * Number(cm), give: 10 * Number(give) };
}

type Axe = {
  readonly run: () => Promise<{
    readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  }>;
};

/** What axe finds, and whether anything scrolls. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(source);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run();
    const { scrollHeight, scrollWidth } = document.documentElement;
    const scrolls = scrollHeight > innerHeight || scrollWidth > innerWidth ? [`scrolls: ${scrollHeight}`] : [];
    return [...violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`), ...scrolls];
  });
}

type Kept = { readonly measureId: string; readonly from: string; readonly mm: number };

const readingsKept = (page: Page): Promise<Kept[]> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('hemling');
        opening.onsuccess = () => {
          const asked = opening.result.transaction('readings').objectStore('readings').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result);
          };
        };
      }),
  );
