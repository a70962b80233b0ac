import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openSite, phone, type Site, type Visit } from './browser';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

/** A toy with one number taken: 17½ inches round the head. */
async function atHeadGirth(prepare?: (page: Page) => Promise<unknown>): Promise<Visit & { maker: Maker }> {
  const visit = await site.visit({ ...phone, locale: 'en-US' });
  await prepare?.(visit.page);
  const maker = new Maker(visit.page, site.address);
  await maker.at('new');
  await maker.name('Thistle');
  await maker.kind('Two arms');
  await maker.press('Next: what to make');
  await maker.choose(/hooded top/i);
  await maker.step('head-girth');
  await maker.type('17½');
  await visit.page.getByText('saved', { exact: true }).waitFor();
  return { ...visit, maker };
}

const refused: readonly (readonly [typed: string, said: RegExp])[] = [
  ['abc', /word/],
  ['5 1/', /not finished/],
  ['1/0', /zero below the line/],
  ['0', /no length/],
  ['-3', /below zero/],
  ['9999', /three metres/],
  ['51/2', /space/],
  [`It was a lovely day, and the tape said ${'seventeen and a half '.repeat(20)}`, /too much/],
];

describe('what cannot be a length', () => {
  test('is said beside the field, stays as it was typed, and costs nothing that was kept', async () => {
    const { page, maker, wrong, close } = await atHeadGirth();
    for (const [typed, said] of refused) {
      await maker.type(typed);
      await maker.press(/^Next:/);
      await page.locator('#step-status .wrong-words', { hasText: said }).waitFor();
      expect(await maker.field().evaluate((field) => field === document.activeElement)).toBe(true);
      expect(await maker.field().inputValue()).toBe(typed);
      expect(await maker.field().getAttribute('aria-invalid')).toBe('true');
      expect(await page.evaluate(faultIsBesideField)).toBe(true);
      expect(page.url()).toMatch(/head-girth$/);
    }
    await page.reload();
    expect(await maker.field().inputValue()).toBe('17½');
    expect(wrong).toEqual([]);
    await close();
  });

  test('an empty field asks for the number or to skip', async () => {
    const { page, maker, close } = await atHeadGirth();
    await maker.next();
    await maker.press(/^Next:/);
    await page.locator('#step-status .wrong-words', { hasText: 'skip' }).waitFor();
    await maker.field().press('Enter');
    await page.getByRole('alert').filter({ hasText: 'skip' }).waitFor();
    await maker.press('Skip');
    await page.waitForURL((url) => !url.href.endsWith('face-edge'));
    await close();
  });

  test('an empty name asks for one', async () => {
    const { page, close } = await site.visit();
    const maker = new Maker(page, site.address);
    await maker.at('new');
    await maker.press('Next');
    await page.getByRole('alert').filter({ hasText: 'name' }).waitFor();
    expect(page.url()).toMatch(/new$/);
    await close();
  });

  test('switching units never changes what is kept', async () => {
    const { page, maker, close } = await atHeadGirth((page) => page.clock.install());
    await maker.press('centimetres');
    expect(await maker.field().inputValue()).toBe('44.5');
    await maker.press('inches');
    expect(await maker.field().inputValue()).toBe('17½');
    await page.clock.fastForward('01:00');
    await page.reload();
    expect(await maker.field().inputValue()).toBe('17½');
    await close();
  });
});

describe('a store that fails', () => {
  test.each([
    ['is full', 'QuotaExceededError', /full/],
    ['is broken', 'UnknownError', /fault/],
  ])('that %s: it is said, the number stays, and can be saved as a file', async (_, error, said) => {
    const { page, maker, close } = await atHeadGirth((opened) => opened.addInitScript(failWhenTold));
    await page.evaluate((name) => Object.assign(window, { failWith: name }), error);
    await maker.type('16');
    await page.getByRole('alert').filter({ hasText: said }).waitFor();
    expect(await maker.field().inputValue()).toBe('16');
    const [download] = await Promise.all([page.waitForEvent('download'), maker.press('Save it as a file')]);
    expect(readFileSync(await download.path(), 'utf8')).toMatch(/Head girth: 16\sin/);

    await page.evaluate(() => Object.assign(window, { failWith: '' }));
    await maker.next();
    await maker.step('head-girth');
    expect(await maker.field().inputValue()).toBe('16');
    await close();
  });

  test('that is missing: it is said before anything is typed', async () => {
    const { page, close } = await site.visit();
    await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
    await page.goto(site.address);
    await page.getByRole('heading', { name: 'This window keeps nothing' }).waitFor();
    await close();
  });
});

test('a setting that the app cannot bear leaves the settings in reach, and undone there, the app', async () => {
  const { page, maker, close } = await atHeadGirth((opened) => opened.addInitScript(breakByTheme));
  await maker.at('settings');
  await page.getByRole('radio', { name: 'Dark' }).check();
  await page.waitForFunction(() => document.documentElement.dataset.theme === 'dark');
  await page.evaluate(() => sessionStorage.setItem('breaks', 'yes'));
  await page.reload();
  await page.getByRole('radio', { name: 'As the device' }).check();
  await page.reload();
  await maker.at('');
  await page
    .getByRole('link', { name: /Thistle/ })
    .first()
    .waitFor();
  await close();
});

/** In the page: once it is told to break, nothing can be set dark. */
function breakByTheme(): void {
  const refuse = {
    set: () => {
      throw new TypeError('told to break');
    },
  };
  const dataset = Object.getOwnPropertyDescriptor(HTMLElement.prototype, 'dataset')?.get;
  Object.defineProperty(HTMLElement.prototype, 'dataset', {
    get() {
      const own = dataset?.call(this);
      return sessionStorage.getItem('breaks') ? new Proxy(own, refuse) : own;
    },
  });
}

/** In the page: every write fails with the error named by `failWith`, if any. */
function failWhenTold(): void {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (...given) {
    const name = (window as unknown as { failWith?: string }).failWith;
    if (name) throw new DOMException('told to fail', name);
    return put.apply(this, given);
  };
}

/** In the page: whether what is wrong stands within a thumb's breadth under the field. */
function faultIsBesideField(): boolean {
  const field = document.querySelector('main input')?.getBoundingClientRect();
  const alert = document.querySelector('#step-status .wrong-words')?.getBoundingClientRect();
  return field !== undefined && alert !== undefined && alert.top - field.bottom < 40 && alert.top >= field.top;
}
