import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { decodeCode, readCard } from '../../app/sharing';
import { openSite, phone, type Site, untilKept, type Visit } from './browser';
import { Maker } from './maker';
import { borrowed, saved } from './two-phones';

let site: Site;
let sender: Visit;
let pdf: Buffer;
beforeAll(async () => {
  site = await openSite({ under: '/shop/' });
  sender = await newPhone();
  pdf = await dressed(sender);
});
afterAll(() => site.close());

/** A phone with the app kept for when there is no network. */
async function newPhone(): Promise<Visit> {
  const visit = await site.visit({ ...phone, permissions: ['clipboard-read', 'clipboard-write'] });
  await visit.page.goto(site.address);
  await untilKept(visit.page);
  return visit;
}

/** Borrows a toy, draws a hooded top for it, and opens the screen that sends its card. Gives its pattern. */
async function dressed(visit: Visit): Promise<Buffer> {
  const maker = await borrowed(visit.page, site, 'Bramble');
  const toy = visit.page.url();
  await maker.press(/^Make something/);
  await maker.press(/hooded top/i);
  await visit.page.waitForURL(/\/choices$/);
  await maker.go('print');
  const pdf = await patternOf(visit.page);
  await visit.page.goto(toy);
  await maker.press('Share its card');
  await visit.page.getByRole('button', { name: 'Copy the link' }).waitFor();
  return pdf;
}

async function patternOf(page: Page): Promise<Buffer> {
  await page.getByRole('button', { name: 'Save the PDF' }).and(page.locator(':enabled')).waitFor({ timeout: 60_000 });
  return saved(page, 'Save the PDF');
}

/** Keeps the card that is shown, and prints the garment that came with it. */
async function keptPattern(page: Page): Promise<Buffer> {
  await page.getByRole('heading', { level: 1, name: 'A card for Bramble' }).waitFor({ timeout: 30_000 });
  expect(await page.locator('body').textContent()).toContain('Hooded top');
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.getByRole('heading', { level: 1, name: 'Bramble' }).waitFor();
  await page
    .getByRole('link', { name: /hooded top/i })
    .first()
    .click();
  await page.waitForURL(/\/toy\/\w+\/\w+\//);
  await new Maker(page, site.address).go('print');
  return patternOf(page);
}

describe('a card from one phone to another, without a network', () => {
  test.each([
    [
      'by picture',
      async (from: Page, to: Page) => {
        const buffer = await saved(from, 'Save the picture');
        await to.goto(`${site.address}#/card`);
        await to.locator('input[type=file]').setInputFiles({ name: 'card.png', mimeType: 'image/png', buffer });
      },
    ],
    [
      'by link',
      async (from: Page, to: Page) => {
        await from.getByRole('button', { name: 'Copy the link' }).click();
        await from.getByText('The link is copied').waitFor();
        const link = await from.evaluate(() => navigator.clipboard.readText());
        expect(link).toMatch(/^http:\/\/[^#]*\/shop\/#1[\w-]+$/);
        expect(decodeCode(link)).toMatchObject({ ok: true, skipped: [] });
        await to.goto(link);
      },
    ],
    [
      'by file',
      async (from: Page, to: Page) => {
        const buffer = await saved(from, 'Save as a file');
        expect(readCard(buffer.toString())).toMatchObject({ ok: true, skipped: [] });
        await to.goto(`${site.address}#/card`);
        await to.locator('input[type=file]').setInputFiles({ name: 'card.json', mimeType: 'application/json', buffer });
      },
    ],
  ])('%s: it arrives, and the pattern drawn from it is the same to the byte', async (_, carry) => {
    const receiver = await newPhone();
    await site.stop();
    onTestFinished(() => site.restart());
    await carry(sender.page, receiver.page);
    const arrived = await keptPattern(receiver.page);
    expect(arrived.equals(pdf)).toBe(true);
    const strange = [...sender.wrong, ...receiver.wrong].filter((line) => !line.includes('ERR_CONNECTION_REFUSED'));
    expect(strange).toEqual([]);
    await receiver.close();
  });
});
