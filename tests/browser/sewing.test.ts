import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSite, phone, type Site } from './browser';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

test('sewn through all steps, tried on, made better, and the next garment with it; taken back, as before', async () => {
  const { page, wrong, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press(/^Make something/);
  await maker.choose(/hooded top/i);
  await maker.go('print', 'Sew it, step by step');
  await maker.press('Sew it, step by step');
  await page.getByRole('link', { name: 'Begin sewing' }).click();

  const steps: string[] = [];
  for (;;) {
    const sewn = page.getByRole('button', { name: /^Sewn/ });
    await sewn.waitFor();
    steps.push((await page.locator('h1').textContent()) ?? '');
    expect(await scrolls(page), steps.at(-1)).toBe(false);
    const last = (await sewn.textContent())?.includes('last');
    if (steps.length === 3) {
      await page.reload();
      await sewn.waitFor();
    }
    await sewn.click();
    if (last) break;
    await page.waitForFunction((before) => document.querySelector('h1')?.textContent !== before, steps.at(-1));
  }
  expect(steps.indexOf('Armholes')).toBeLessThan(steps.findIndex((step) => step.startsWith('Sides')));
  await page.getByRole('link', { name: 'Tried it on?' }).waitFor();
  expect(await page.getByText('sewn', { exact: true }).count()).toBe(steps.length);

  await maker.go('pattern', 'Put it on paper');
  const before = await armhole(page);
  await maker.go('tried', 'It sits well');
  await page.getByRole('button', { name: 'Under the arm' }).click();
  await page.getByRole('radio', { name: 'tight' }).check({ force: true });
  await expect.poll(() => below(page, 'By about how much?')).toBe(false);
  expect(await page.getByRole('link', { name: 'It sits well' }).count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Change it' }).isDisabled()).toBe(true);
  await page.getByRole('radio', { name: /¼/ }).check({ force: true });
  await page.getByText(/Armhole: ¼.* more/).waitFor();
  await page.getByRole('img', { name: /Before and after.*Sleeve/ }).waitFor();
  await page.getByRole('button', { name: 'Change it' }).click();
  await expect.poll(() => armhole(page)).toBeCloseTo(before + 0.25, 1);

  await maker.press('Undo');
  await expect.poll(() => armhole(page)).toBe(before);
  await page.goBack();
  await page.getByRole('button', { name: 'Under the arm' }).click();
  await page.getByRole('radio', { name: 'tight' }).check({ force: true });
  await page.getByRole('radio', { name: /¼/ }).check({ force: true });
  await page.getByRole('button', { name: 'Change it' }).click();
  await expect.poll(() => armhole(page)).toBeCloseTo(before + 0.25, 1);

  const [, toy] = /#\/toy\/(\w+)/.exec(page.url()) ?? [];
  await maker.at(`toy/${toy}/make`);
  await maker.choose(/^tee/i);
  await maker.go('pattern', 'Put it on paper');
  await expect.poll(() => armhole(page)).toBeCloseTo(before + 0.25, 1);
  await maker.at(`toy/${toy}`);
  await page.getByRole('button', { name: 'Take back' }).click();
  await page.getByText('Learnt from trying on').waitFor({ state: 'detached' });

  await maker.press(/^Several at once/);
  await maker.press(/^These 2 together/);
  await page.getByText(/none is taken twice/).waitFor();
  await maker.press('Put it on paper');
  await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
  await maker.named('Open it to print').waitFor();
  // Longer than it takes to note that both went on paper, which must not make the file anew.
  await page.waitForTimeout(1000);
  expect(await maker.named('Open it to print').isVisible()).toBe(true);
  await maker.at(`toy/${toy}`);
  await expect.poll(() => page.getByText(/^on paper/).count()).toBe(2);
  await maker.press('About: Tee');
  await page.getByText('Nothing has changed.').waitFor();
  await maker.press('Make again');
  await maker.heading(/for whom/);
  await page.getByRole('button', { name: /^Bramble/ }).click();
  await page
    .getByText(/^Since/)
    .first()
    .waitFor();
  expect(wrong).toEqual([]);
  await close();
});

test('on the narrowest phone the way on is in sight at every step, however much there is to say', async () => {
  const { page, close } = await site.visit({ ...phone, viewport: { width: 320, height: 568 } });
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press(/^Make something/);
  await maker.choose(/hooded top/i);
  await maker.go('sew', 'Begin sewing');
  const steps = await page.locator('ol a').evaluateAll((all) => all.map((each) => each.getAttribute('href') ?? ''));
  const hidden: string[] = [];
  for (const step of steps) {
    await page.goto(`${site.address}${step}`);
    const sewn = page.getByRole('button', { name: /^Sewn/ });
    await sewn.waitFor();
    const box = await sewn.boundingBox();
    if (!box || box.y + box.height > 568) hidden.push(step);
  }
  expect(steps.length).toBeGreaterThan(8);
  expect(hidden).toEqual([]);
  await close();
});

/** The garment's armhole in the table of how it fits, inches. */
async function armhole(page: Page): Promise<number> {
  // The table may be folded away: its text is there all the same.
  const cells = page
    .locator('tr', { hasText: /^Armhole/ })
    .first()
    .locator('td');
  const text = (await cells.nth(1).textContent({ timeout: 20_000 })) ?? '';
  return inches(text);
}

function inches(text: string): number {
  const found = /(\d+)?\s*(?:(\d+)[/⁄](\d+))?/.exec(text.normalize('NFKD').replaceAll('⁄', '/')) ?? [];
  return Number(found[1] ?? 0) + (found[3] ? Number(found[2]) / Number(found[3]) : 0);
}

const scrolls = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight > innerHeight);

/** Whether a group of this name reaches below what the button at the lower edge leaves in sight. */
async function below(page: Page, name: string): Promise<boolean> {
  const group = await page.getByRole('group', { name }).boundingBox();
  const foot = await page.locator('.page-acts').boundingBox();
  return (group?.y ?? 0) + (group?.height ?? 0) > (foot?.y ?? 0);
}
